"""Why a photo's card can't give a scale, and how to take a better photo."""

from __future__ import annotations

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

KEPT = "The photo stays as it is."
AGAIN = "Take the photo again"


def no_card(cards: str, mirrored: bool) -> PhotoCannot:
    """No marker was found; `mirrored` where there would be some in the mirror picture."""
    if mirrored:
        return PhotoCannot(
            "The photo is mirrored: the bench card's markers are the wrong way round in it.",
            KEPT,
            f"{AGAIN} with the main camera, or switch mirroring off in the camera's settings.",
        )
    return PhotoCannot(
        f"No marker of {cards} was found in the photo.",
        KEPT,
        f"{AGAIN} with the printed card flat under the part, whole in the picture, in even light.",
    )


def too_few(seen: int, needed: int, carried: int) -> PhotoCannot:
    """Fewer markers than needed are clearly seen."""
    return PhotoCannot(
        f"Too few markers: {seen} of the card's {carried} {'is' if seen == 1 else 'are'} "
        f"clearly seen, {needed} are needed.",
        KEPT,
        f"{AGAIN} with more of the card in the picture and nothing lying on its markers.",
    )


def two_alike(count: int) -> PhotoCannot:
    """The same card lies in the photo twice."""
    return PhotoCannot(
        f"The same bench card is in the photo twice ({count} markers are there two times).",
        KEPT,
        f"{AGAIN} with one card only.",
    )


def too_small(module_px: float) -> PhotoCannot:
    """The markers are so small that their edges run into each other."""
    return PhotoCannot(
        f"The card is too small in the photo: the squares of its markers are {module_px:.1f} "
        f"pixels wide, {LEAST_MODULE_PX:.0f} are needed.",
        KEPT,
        f"{AGAIN} from nearer, and don't send it through a messenger that shrinks it.",
    )


def too_coarse(mm_per_px: float) -> PhotoCannot:
    """One pixel is too much of a millimetre."""
    return PhotoCannot(
        f"The card is too small in the photo: one pixel is {mm_per_px:.2f} mm there, "
        f"{MOST_MM_PER_PX:.2f} mm at most can be measured in.",
        KEPT,
        f"{AGAIN} from nearer, and don't send it through a messenger that shrinks it.",
    )


def blurred(blur_px: float) -> PhotoCannot:
    """The card's edges are spread too far."""
    return PhotoCannot(
        f"The photo is blurred: the card's edges are spread over {4 * blur_px:.0f} pixels.",
        KEPT,
        f"{AGAIN} with the camera held still, focused on the part, in more light.",
    )


def tilted(tilt_deg: float) -> PhotoCannot:
    """The camera looked at the card from too far aside."""
    return PhotoCannot(
        f"The camera was tilted {tilt_deg:.0f}° against the card, {MOST_TILT_DEG:.0f}° at most "
        "can be measured in.",
        KEPT,
        f"{AGAIN} from more nearly straight above.",
    )


def no_pose() -> PhotoCannot:
    """No camera at all would see the markers where they are."""
    return PhotoCannot(
        "The markers in the photo don't lie as on the card that is named.",
        KEPT,
        "Name the card that was photographed, or print a new one.",
    )


def bent(off_mm: float, arch_mm: float, whole: bool = True) -> PhotoCannot:
    """The corners fit no flat or gently arched card; nor would a photo that is not `whole`."""
    seen = (
        f"it arches by {arch_mm:.1f} mm"
        if off_mm <= MOST_OFF_MM
        else f"its markers are {off_mm:.2f} mm off"
    )
    if not whole:
        return PhotoCannot(
            f"The card doesn't lie flat, or the photo was cropped or stretched: {seen}.",
            KEPT,
            "Bring the photo as the camera made it. If that is it, take the photo again with the "
            "card flat.",
        )
    return PhotoCannot(
        f"The card doesn't lie flat, or isn't the one that is named: {seen}.",
        KEPT,
        f"{AGAIN} with the card flat; glue it to a board if it curls.",
    )
