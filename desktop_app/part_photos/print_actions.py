"""Which printed card lies in a photo, and what a measured ruler does to the photos on it."""

from __future__ import annotations

from collections.abc import Generator, Mapping, Sequence
from dataclasses import replace
from typing import NamedTuple

from desktop_app.language import tr
from desktop_app.part_photos import stored_marks, stored_scales
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.print_scale import PrintScale, one_of, print_scale
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.mark_actions import (
    Follow,
    Read,
    RestsOn,
    put_card_scale,
    read_mark,
)
from desktop_app.part_photos.marks.mark import SIZED, Mark, Measured
from desktop_app.part_photos.stored_cards import AnyCard, cards_by_id, printed_card, prints_of
from desktop_app.part_photos.stored_scales import KeptScale
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

# What marks say by a scale, worked out before the deed that keeps it: by mark and kept scale.
SaidAhead = Mapping[tuple[Mark, str], Measured | None]


def keep_card(
    record: ShopRecord,
    photo_id: int,
    seen: CardScale,
    layout: CardLayout,
    follow: Follow | None = None,
) -> Done:
    """Keep the scale of a card that was found in a photo; `seen` is for a card printed as drawn.

    Any print of that layout may lie there, put away or not, with the ruler that it has when this
    is kept. The photo's marks are worked out anew.
    """

    def work(deed: Deed) -> None:
        ours = prints_of(deed.connection, layout)
        resting = _resting(seen, 1.0, ours, {one.id: one.print_scale for one in ours})
        put_card_scale(deed, photo_id, *resting, follow)

    return record.do(tr("Keep a photo's scale from its card"), work)


def say_print(
    record: ShopRecord, photo_id: int, card_id: int | None, follow: Follow | None = None
) -> Done:
    """Say which printed card lies in a photo; None: it is not known, and any of them may be it.

    The photo's scale and the sizes of its marks follow. Raises ShopTrouble where no card gives the
    scale, or that print has another layout.
    """

    def work(deed: Deed) -> None:
        kept = stored_scales.scale_of_photo(deed.connection, photo_id)
        offered = stored_scales.prints_to_choose(deed.connection, kept)
        among = [one for one in offered if card_id in (None, one.id)]
        if kept is None or not among:
            raise ShopTrouble(
                tr("That printed card can't be the one in this photo."),
                kept=tr("The photo keeps the scale that it has."),
                do=tr("Look for the card in the photo again."),
            )
        nobody_knows = card_id is None and len(among) == 1  # it may be one that was never noted
        resting = _rests_anew(kept, [] if nobody_knows else among)
        put_card_scale(deed, photo_id, *resting, follow)

    return record.do(tr("Say which printed card is in a photo"), work)


def print_measured(
    deed: Deed, card_id: int, follow: Follow | None = None, ahead: SaidAhead | None = None
) -> None:
    """Work out anew the scales that rest on a print whose ruler was measured, and their marks.

    `follow` is called for each of those marks; what `ahead` holds is not worked out again.
    """
    there = cards_by_id(deed.connection)
    for kept in stored_scales.scales_resting_on(deed.connection, card_id):
        among = [there[one] for one in kept.prints if one in there]
        resting = _rests_anew(kept, among)
        read = _from_ahead(ahead or {}, resting.scale)
        put_card_scale(deed, kept.photo_id, *resting, follow, read)


def said_by_ruler(
    record: ShopRecord, card_id: int, measured_mm: float | None
) -> Generator[Step, None, SaidAhead]:
    """Work out what marks would say if this were read on a card's ruler; nothing is kept.

    Beside the window and outside of any deed, so that nobody waits for the record meanwhile.
    """
    with record.reading() as connection:
        there = cards_by_id(connection)
        nominal = printed_card(connection, card_id).layout.check_length_mm
        resting = stored_scales.scales_resting_on(connection, card_id)
        photos = [kept.photo_id for kept in resting]
        marks = stored_marks.marks_of_photos(connection, photos)
    known = {one.id: one.print_scale for one in there.values()}
    known[card_id] = print_scale(measured_mm, nominal)
    said: dict[tuple[Mark, str], Measured | None] = {}
    for number, kept in enumerate(resting):
        yield Step(number, len(resting), tr("working out photos on this card anew"))
        among = [there[one] for one in kept.prints if one in there]
        scale = _rests_anew(kept, among, known).scale
        name = scale.as_json()
        for one in marks:
            if one.photo_id == kept.photo_id and one.mark.type in SIZED:
                said[_of_size(one.mark), name] = read_mark(one.mark, scale)
    return said


class _Resting(NamedTuple):
    scale: CardScale
    rests: RestsOn


def _rests_anew(
    kept: KeptScale, among: Sequence[AnyCard], known: Mapping[int, PrintScale] | None = None
) -> _Resting:
    assert isinstance(kept.scale, CardScale)
    if known is None:
        known = {one.id: one.print_scale for one in among}
    return _resting(kept.scale, kept.card_scale, among, known)


def _resting(
    scale: CardScale, factor: float, among: Sequence[AnyCard], known: Mapping[int, PrintScale]
) -> _Resting:
    """A scale worked out for a print `factor` as large as drawn, now for one of these prints."""
    ids = tuple(one.id for one in among)
    print_ = one_of([known[one] for one in ids])
    otherwise = scale.printed_otherwise(print_.factor / factor, print_.u)
    return _Resting(otherwise, RestsOn(ids[0] if len(ids) == 1 else None, print_.factor, ids))


def _from_ahead(ahead: SaidAhead, scale: CardScale) -> Read:
    name = scale.as_json() if ahead else ""

    def read(mark: Mark, by: PlaneScale | None) -> Measured | None:
        there = (_of_size(mark), name)
        return ahead[there] if there in ahead else read_mark(mark, by)

    return read


def _of_size(mark: Mark) -> Mark:
    """A mark without its name, which changes no size."""
    return replace(mark, name="")
