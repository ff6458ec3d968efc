"""The new part's photo laid on the old one's: by cards, outline, features or clicks, or not."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card
from desktop_app.part_photos.overlay.alignment import NEW, OLD, Alignment, cannot
from desktop_app.part_photos.overlay.card_way import OnCard, by_clicks, by_outline
from desktop_app.part_photos.overlay.features import by_features
from desktop_app.part_photos.overlay.free_field import free_field
from desktop_app.part_photos.overlay.mirrored import refuse_mirrored_card, refuse_turned_over
from desktop_app.part_photos.overlay.plain_way import by_plain_clicks, by_plain_outline
from desktop_app.part_photos.overlay.trust import CLICK_TWO, SAY_HEIGHT
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from desktop_app.part_photos.camera.plane_scale import PlaneScale
    from desktop_app.part_photos.photo_pixels import PhotoPixels

Clicks = Sequence[tuple[tuple[float, float], tuple[float, float]]]

SAME_WITHIN = 10  # grey levels, in pictures an eighth as large


def align(
    old: PhotoPixels,
    new: PhotoPixels,
    old_scale: PlaneScale | None,
    new_scale: PlaneScale | None,
    height_mm: float | None = None,
    clicks: Clicks | None = None,
    old_card: CardLayout | None = None,
    new_card: CardLayout | None = None,
) -> Alignment:
    """Lay the new photo on the old one, or say why that can't be done.

    With cards on both, both photos are brought onto the plane `height_mm` above the card, where
    the part's outline lies; nothing is stretched then. No upper edge of a part lies on the card
    itself: a height of 0 counts as not said, like None, and any plausible height is reckoned with.
    `clicks` are pairs (old pixel, new pixel)
    of common points, two or more. The cards' layouts, as large as they were printed, tell where the
    part may lie; without them it is looked for in the field that the program's own cards share.
    Raises ShopTrouble for fewer
    than two clicks, or a height at or above a camera. Takes its time: call it beside the window.
    """
    height_mm = height_mm or None
    carded = _on_cards(old, new, old_scale, new_scale, height_mm, old_card, new_card)
    if clicks is None and _same_picture(old, new):
        return _identity()
    try:
        for which, one, scale in ((OLD, old, old_scale), (NEW, new, new_scale)):
            if scale is None or scale.source != "card":
                refuse_mirrored_card(one, (old_card, new_card), which)
        if clicks is not None:
            return _clicked(clicks, carded, height_mm)
        if carded is not None:
            return _with_hint(by_outline(*carded, height_mm), height_mm)
        found = by_plain_outline(old, new) or by_features(old, new)
        if found is None:
            refuse_turned_over(old, new)
    except PhotoCannot as trouble:
        return cannot(trouble.sentence())
    return found or cannot(_why(old_scale, new_scale))


def _with_hint(found: Alignment, height_mm: float | None) -> Alignment:
    """Ask for the height first where nobody said it: without it like parts look unlike."""
    if found.aligned or height_mm:
        return found
    return replace(found, why=f"{SAY_HEIGHT} {found.why}")


def _clicked(
    clicks: Clicks, carded: tuple[OnCard, OnCard] | None, height_mm: float | None
) -> Alignment:
    import numpy as np

    if len(clicks) < 2:
        raise ShopTrouble(
            tr("Two photos need two common points."), do=tr("Click two in each photo.")
        )
    points: NDArray[np.float64] = np.array(clicks, np.float64)
    if points.shape[1:] != (2, 2) or not np.isfinite(points).all():
        raise ShopTrouble(tr("A clicked point is no point."), do=tr("Click it again."))
    if carded is None:
        return by_plain_clicks(points[:, 0], points[:, 1])
    return by_clicks(*carded, height_mm, points[:, 0], points[:, 1])


def _on_cards(
    old: PhotoPixels,
    new: PhotoPixels,
    old_scale: PlaneScale | None,
    new_scale: PlaneScale | None,
    height_mm: float | None,
    old_card: CardLayout | None,
    new_card: CardLayout | None,
) -> tuple[OnCard, OnCard] | None:
    """Return both photos with their scales where both come from cards, else None."""
    if old_scale is None or new_scale is None:
        return None
    if old_scale.source != "card" or new_scale.source != "card":
        return None
    for which, scale in ((OLD, old_scale), (NEW, new_scale)):
        far = scale.distance_mm
        if height_mm is not None and far is not None and not -10.0 <= height_mm < 0.8 * far:
            raise ShopTrouble(
                tr(
                    "At {height_mm:g} mm above the card nothing can lie before the camera "
                    "of the {which} photo.",
                    height_mm=height_mm,
                    which=which,
                ),
                do=tr("Say how high the part's outline lies above the card, in mm."),
            )
    return (
        OnCard(old, old_scale, free_field(old_card or _own_card(old_scale))),
        OnCard(new, new_scale, free_field(new_card or _own_card(new_scale))),
    )


def _own_card(scale: PlaneScale) -> CardLayout | None:
    """Return the program's own card that a scale names, if it does."""
    named = getattr(scale, "card", None)
    return next((one for one in map(bench_card, PAGES_MM) if one.name == named), None)


def _why(old_scale: PlaneScale | None, new_scale: PlaneScale | None) -> str:
    missing = [
        which
        for which, scale in ((OLD, old_scale), (NEW, new_scale))
        if scale is None or scale.source != "card"
    ]
    where = tr("either photo") if len(missing) == 2 else tr("the {which} photo", which=missing[0])
    return tr(
        "No card could be used in {where}, and neither the outline nor features show "
        "how they lie on each other. Take both on a bench card, or {click_two}",
        where=where,
        click_two=CLICK_TWO,
    )


def _identity() -> Alignment:
    import numpy as np

    said = tr("These are the same picture.")
    return Alignment(True, said, "same picture", np.eye(3), residual_px=0.0)


def _same_picture(old: PhotoPixels, new: PhotoPixels) -> bool:
    """Whether both show the same pixels, but for having been stored anew."""
    import cv2
    import numpy as np

    if old.rgb.shape != new.rgb.shape:
        return False
    if np.array_equal(old.rgb, new.rgb):
        return True
    size = (max(1, old.width // 8), max(1, old.height // 8))
    first, second = (
        cv2.resize(one.rgb, size, interpolation=cv2.INTER_AREA).astype(np.int16)
        for one in (old, new)
    )
    return int(np.abs(first - second).max()) < SAME_WITHIN
