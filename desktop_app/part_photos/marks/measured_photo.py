"""All marks of one photo, measured by what a file of marks asks for."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.ruler_length import CALLIPER_U_MM, is_near
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.mark_words import matters_unsaid
from desktop_app.part_photos.marks.cautions import height_unsaid
from desktop_app.part_photos.marks.mark import Mark, Measured, Pixel
from desktop_app.part_photos.marks.marks_file import CardAsked, MarksAsked, called
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.shop_record.trouble import ShopTrouble

MARGIN_PX = 2.0  # by which a point may lie outside the picture


@dataclass(frozen=True, slots=True)
class MeasuredPhoto:
    """The marks, on the edges that were found where that was asked; what each one says."""

    scale: PlaneScale
    marks: tuple[Mark, ...]
    measured: tuple[Measured, ...]
    warnings: tuple[str, ...]


def measured_photo(
    asked: MarksAsked,
    pixels: PhotoPixels,
    layout: CardLayout | None,
    file: str,
    done: Callable[[int, int], None] = lambda _so_far, _of: None,
) -> MeasuredPhoto:
    """Measure all marks of a photo; `layout` is the card's, `file` is only named in messages.

    `done` hears after each mark how many of how many are measured.

    Raises PhotoCannot where the photo gives no scale, ShopTrouble naming the mark that can't be
    measured.
    """
    for number, mark in enumerate(asked.marks):
        _refuse_outside(pixels, mark.points_px, f"{file}: {called(number, mark)}")
    if not isinstance(asked.scale, CardAsked):
        _refuse_outside(pixels, asked.scale.points_px, f"{file}: scale")
    scale = _scale(asked, pixels, layout)
    marks, measured = [], []
    for number, mark in enumerate(asked.marks):
        try:
            placed, said = _one(mark, scale, pixels, asked.snap)
        except ShopTrouble as trouble:
            where = f"{file}: {called(number, mark)}"
            raise ShopTrouble(f"{where}: {trouble.what}", do=trouble.do) from trouble
        marks.append(placed)
        measured.append(said)
        done(number + 1, len(asked.marks))
    warnings = [*scale.warnings, *_print_far_off(asked), *_without_height(asked, scale)]
    for number, said in enumerate(measured):
        mark = marks[number]
        unsaid = height_unsaid(mark, scale)  # said above, in one line for all
        spoken = [one for one in said.warnings if one != unsaid]
        warnings += [f"{called(number, mark)}: {one}" for one in spoken]
    return MeasuredPhoto(scale, tuple(marks), tuple(measured), tuple(warnings))


def _print_far_off(asked: MarksAsked) -> tuple[str, ...]:
    """Doubt a print that is further off than a printer makes it: it was fitted to the page."""
    said = asked.scale.card_scale if isinstance(asked.scale, CardAsked) else None
    if said is None or is_near(said, 1.0):
        return ()
    off = abs(said - 1)
    words = (
        tr("The card's print is {off:.1%} larger than drawn:", off=off)
        if said > 1
        else tr("The card's print is {off:.1%} smaller than drawn:", off=off)
    )
    do = tr("was it fitted to the page? Measure its ruler again, or print it at 100 %.")
    return (f"{words} {do}",)


def _scale(asked: MarksAsked, pixels: PhotoPixels, layout: CardLayout | None) -> PlaneScale:
    if not isinstance(asked.scale, CardAsked):
        return asked.scale
    from desktop_app.part_photos.camera.find_scale import card_scale

    assert layout is not None
    if asked.scale.card_scale is None:
        return card_scale(pixels, [layout])
    return card_scale(
        pixels, [layout], asked.scale.card_scale, CALLIPER_U_MM / layout.check_length_mm
    )


def _one(mark: Mark, scale: PlaneScale, pixels: PhotoPixels, snap: bool) -> tuple[Mark, Measured]:
    from desktop_app.part_photos.marks.count import count_along
    from desktop_app.part_photos.marks.measure import measure
    from desktop_app.part_photos.marks.snap import snapped

    if mark.type == "count":
        return mark, count_along(mark, pixels)
    placed = snapped(mark, pixels, scale) if snap else mark
    return placed, measure(placed, scale)


def _refuse_outside(pixels: PhotoPixels, points: Sequence[Pixel], where: str) -> None:
    right, bottom = pixels.width - 1 + MARGIN_PX, pixels.height - 1 + MARGIN_PX
    for x, y in points:
        if not (-MARGIN_PX <= x <= right and -MARGIN_PX <= y <= bottom):
            raise ShopTrouble(
                tr(
                    "{where}: the point ({x:g}, {y:g}) lies outside the picture.",
                    where=where,
                    x=x,
                    y=y,
                ),
                do=tr(
                    "Accepted: x up to {width}, y up to {height} pixels, as the photo is "
                    "seen upright.",
                    width=pixels.width - 1,
                    height=pixels.height - 1,
                ),
            )


def _without_height(asked: MarksAsked, scale: PlaneScale) -> tuple[str, ...]:
    """A size at an unknown height is wrong by its height over the camera's distance."""
    names = [
        called(number, mark)
        for number, mark in enumerate(asked.marks)
        if matters_unsaid(mark, scale)
    ]
    if not names or scale.distance_mm is None:
        return ()
    some = ", ".join(names[:5])
    if len(names) > 5:
        some += " " + tr("and {more} more", more=len(names) - 5)
    return (
        tr(
            "No height is given for {some}: the size and its ± hold only for what lies on "
            "the card itself. Each millimetre higher makes it about {percent:.2f} % too large.",
            some=some,
            percent=100 / scale.distance_mm,
        ),
    )
