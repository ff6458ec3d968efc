"""What the shop does with bench cards: writes them to files, prints, measures, puts them away."""

from __future__ import annotations

from pathlib import Path

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_file import card_json
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.ruler_length import check_ruler
from desktop_app.part_photos.file_actions import check_place, put_files
from desktop_app.part_photos.mark_actions import Follow
from desktop_app.part_photos.print_actions import SaidAhead, print_measured
from desktop_app.part_photos.sheet_card import card_pdf
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.part_photos.stored_cards import printed_card
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord


def note_printed_card(record: ShopRecord, layout: CardLayout) -> Done:
    """Write down that a card was printed; `made` is its id."""

    def work(deed: Deed) -> None:
        deed.add(
            PrintedCard,
            name=layout.name,
            layout=card_json(layout),
            printed_at=record.clock().isoformat(timespec="seconds"),
            measured_mm=None,
            measured_on=None,
            in_use=1,
        )

    return record.do(tr("Note a printed card"), work)


def note_ruler(
    record: ShopRecord,
    card_id: int,
    measured_mm: float | None,
    follow: Follow | None = None,
    ahead: SaidAhead | None = None,
) -> Done:
    """Write down what a calliper read on a card's ruler, in mm; None takes the figure out.

    Photos that rest on the card get their new scale, and their marks what they say by it; `follow`
    is called for each of those marks within the same deed; what `ahead` holds of them is not
    worked out again. Raises ShopTrouble where it is more than 3 % off.
    """
    day = record.clock().date().isoformat()

    def work(deed: Deed) -> None:
        card = printed_card(deed.connection, card_id)
        if measured_mm is not None:
            check_ruler(measured_mm, card.layout.check_length_mm)
        measured_on = None if measured_mm is None else day
        deed.change(PrintedCard, card_id, measured_mm=measured_mm, measured_on=measured_on)
        print_measured(deed, card_id, follow, ahead)

    return record.do(tr("Measure a card's ruler"), work)


def put_card_away(record: ShopRecord, card_id: int) -> Done:
    """Put a printed card away: the shop uses it no more, but photos may show it all the same."""
    return record.do(
        tr("Put a card away"), lambda deed: deed.change(PrintedCard, card_id, in_use=0)
    )


def write_card(layout: CardLayout, pdf: Path, json: Path | None = None) -> None:
    """Write a card as PDF and, where asked, its layout as JSON; nothing half-written stays.

    Neither is put in its place before both are ready. Raises ShopTrouble. Takes its time: call it
    beside the window.
    """
    places = [(pdf, ".pdf")] if json is None else [(pdf, ".pdf"), (json, ".json")]
    for to, ending in places:
        check_place(to, ending, f"card{ending}")
    contents = {pdf: card_pdf(layout)}
    if json is not None:
        contents[json] = card_json(layout).encode()
    put_files(contents)
