"""Why a photo's card can't give a scale, and how to take a better photo."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.part_photos.photo_cannot import PhotoCannot

MOST_TILT_DEG = 40.0
MOST_BLUR_PX, MOST_BLUR_MM = 3.5, 0.35
MOST_MM_PER_PX = 0.35
LEAST_MODULE_PX = 3.0
# By trials on an A4 card: a saddle of 1 mm, waves of .7 mm, a corner curled up by 4 mm or an edge
# lifted by 3 mm leave this; beyond it lengths of 40 mm are wrong by more than a few tenths of 1 mm.
MOST_OFF_MM = 0.1
# Paper that arches more, 100 mm from its middle, isn't where the part lies, however well it fits.
MOST_ARCH_MM = 2.0
LEAST_MARKERS = 3

KEPT = tr("The photo stays as it is.")
AGAIN = tr("Take the photo again")


def no_card(cards: str, mirrored: bool) -> PhotoCannot:
    """No marker was found; `mirrored` where there would be some in the mirror picture."""
    if mirrored:
        return PhotoCannot(
            tr("The photo is mirrored: the bench card's markers are the wrong way round in it."),
            KEPT,
            tr(
                "{again} with the main camera, or switch mirroring off in the camera's settings.",
                again=AGAIN,
            ),
        )
    return PhotoCannot(
        tr("No marker of {cards} was found in the photo.", cards=cards),
        KEPT,
        tr(
            "{again} with the printed card flat under the part, whole in the picture, in "
            "even light.",
            again=AGAIN,
        ),
    )


def too_few(seen: int, needed: int, carried: int) -> PhotoCannot:
    """Fewer markers than needed are clearly seen."""
    return PhotoCannot(
        _few_seen(seen, needed, carried),
        KEPT,
        tr(
            "{again} with more of the card in the picture and nothing lying on its markers.",
            again=AGAIN,
        ),
    )


def _few_seen(seen: int, needed: int, carried: int) -> str:
    if seen == 1:
        return tr(
            "Too few markers: 1 of the card's {carried} is clearly seen, {needed} are needed.",
            carried=carried,
            needed=needed,
        )
    return tr(
        "Too few markers: {seen} of the card's {carried} are clearly seen, {needed} are needed.",
        seen=seen,
        carried=carried,
        needed=needed,
    )


def two_alike(count: int) -> PhotoCannot:
    """The same card lies in the photo twice."""
    return PhotoCannot(
        tr(
            "The same bench card is in the photo twice ({count} markers are there two times).",
            count=count,
        ),
        KEPT,
        tr("{again} with one card only.", again=AGAIN),
    )


def too_small(module_px: float) -> PhotoCannot:
    """The markers are so small that their edges run into each other."""
    return PhotoCannot(
        tr(
            "The card is too small in the photo: the squares of its markers are "
            "{module_px:.1f} pixels wide, {least_module_px:.0f} are needed.",
            module_px=module_px,
            least_module_px=LEAST_MODULE_PX,
        ),
        KEPT,
        tr(
            "{again} from nearer, and don't send it through a messenger that shrinks it.",
            again=AGAIN,
        ),
    )


def too_coarse(mm_per_px: float) -> PhotoCannot:
    """One pixel is too much of a millimetre."""
    return PhotoCannot(
        tr(
            "The card is too small in the photo: one pixel is {mm_per_px:.2f} mm there, "
            "{most_mm_per_px:.2f} mm at most can be measured in.",
            mm_per_px=mm_per_px,
            most_mm_per_px=MOST_MM_PER_PX,
        ),
        KEPT,
        tr(
            "{again} from nearer, and don't send it through a messenger that shrinks it.",
            again=AGAIN,
        ),
    )


def blurred(blur_px: float) -> PhotoCannot:
    """The card's edges are spread too far."""
    return PhotoCannot(
        tr(
            "The photo is blurred: the card's edges are spread over {pixels:.0f} pixels.",
            pixels=4 * blur_px,
        ),
        KEPT,
        tr("{again} with the camera held still, focused on the part, in more light.", again=AGAIN),
    )


def tilted(tilt_deg: float) -> PhotoCannot:
    """The camera looked at the card from too far aside."""
    return PhotoCannot(
        tr(
            "The camera was tilted {tilt_deg:.0f}° against the card, {most_tilt_deg:.0f}° "
            "at most can be measured in.",
            tilt_deg=tilt_deg,
            most_tilt_deg=MOST_TILT_DEG,
        ),
        KEPT,
        tr("{again} from more nearly straight above.", again=AGAIN),
    )


def no_pose() -> PhotoCannot:
    """No camera at all would see the markers where they are."""
    return PhotoCannot(
        tr("The markers in the photo don't lie as on the card that is named."),
        KEPT,
        tr("Name the card that was photographed, or print a new one."),
    )


def bent(off_mm: float, arch_mm: float, whole: bool = True) -> PhotoCannot:
    """The corners fit no flat or gently arched card; nor would a photo that is not `whole`."""
    seen = (
        tr("it arches by {arch_mm:.1f} mm", arch_mm=arch_mm)
        if off_mm <= MOST_OFF_MM
        else tr("its markers are {off_mm:.2f} mm off", off_mm=off_mm)
    )
    if not whole:
        return PhotoCannot(
            tr(
                "The card doesn't lie flat, or the photo was cropped or stretched: {seen}.",
                seen=seen,
            ),
            KEPT,
            tr(
                "Bring the photo as the camera made it. If that is it, take the photo "
                "again with the card flat."
            ),
        )
    return PhotoCannot(
        tr("The card doesn't lie flat, or isn't the one that is named: {seen}.", seen=seen),
        KEPT,
        tr("{again} with the card flat; glue it to a board if it curls.", again=AGAIN),
    )
