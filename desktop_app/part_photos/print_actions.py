"""Which printed card lies in a photo, and what a measured ruler does to the photos on it."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.part_photos import stored_scales
from desktop_app.part_photos.bench_card.print_scale import one_of
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.mark_actions import Follow, RestsOn, put_card_scale
from desktop_app.part_photos.stored_cards import PrintedCardKept, printed_cards
from desktop_app.part_photos.stored_scales import KeptScale
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


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
                "That printed card can't be the one in this photo.",
                kept="The photo keeps the scale that it has.",
                do="Look for the card in the photo again.",
            )
        nobody_knows = card_id is None and len(among) == 1  # it may be one that was never noted
        _rest(deed, kept, [] if nobody_knows else among, follow)

    return record.do("Say which printed card is in a photo", work)


def print_measured(deed: Deed, card_id: int, follow: Follow | None = None) -> None:
    """Work out anew the scales that rest on a print whose ruler was measured, and their marks.

    `follow` is called for each of those marks.
    """
    there = {one.id: one for one in printed_cards(deed.connection, also_put_away=True)}
    for kept in stored_scales.scales_resting_on(deed.connection, card_id):
        _rest(deed, kept, [there[one] for one in kept.prints if one in there], follow)


def _rest(
    deed: Deed, kept: KeptScale, among: Sequence[PrintedCardKept], follow: Follow | None
) -> None:
    assert isinstance(kept.scale, CardScale)
    known = one_of([card.print_scale for card in among])
    scale = kept.scale.printed_otherwise(known.factor / kept.card_scale, known.u)
    ids = tuple(card.id for card in among)
    rests = RestsOn(ids[0] if len(ids) == 1 else None, known.factor, ids)
    put_card_scale(deed, kept.photo_id, scale, rests, follow)
