"""What the shop does with bench cards: writes them to files, prints, measures, puts them away."""

from __future__ import annotations

import os
from collections.abc import Mapping
from contextlib import ExitStack
from pathlib import Path

from desktop_app.part_photos.bench_card.card_file import card_json
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.ruler_length import check_ruler
from desktop_app.part_photos.sheet_card import card_pdf
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.part_photos.stored_cards import printed_card
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


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

    return record.do("Note a printed card", work)


def note_ruler(record: ShopRecord, card_id: int, measured_mm: float | None) -> Done:
    """Write down what a calliper read on a card's ruler, in mm; None takes the figure out.

    Raises ShopTrouble where it is more than 3 % off.
    """
    day = record.clock().date().isoformat()

    def work(deed: Deed) -> None:
        card = printed_card(deed.connection, card_id)
        if measured_mm is not None:
            check_ruler(measured_mm, card.layout.check_length_mm)
        measured_on = None if measured_mm is None else day
        deed.change(PrintedCard, card_id, measured_mm=measured_mm, measured_on=measured_on)

    return record.do("Measure a card's ruler", work)


def put_card_away(record: ShopRecord, card_id: int) -> Done:
    """Put a printed card away: photos on it keep their scale, new ones aren't offered it."""
    return record.do("Put a card away", lambda deed: deed.change(PrintedCard, card_id, in_use=0))


def write_card(layout: CardLayout, pdf: Path, json: Path | None = None) -> None:
    """Write a card as PDF and, where asked, its layout as JSON; nothing half-written stays.

    Neither is put in its place before both are ready. Raises ShopTrouble. Takes its time: call it
    beside the window.
    """
    places = [(pdf, ".pdf")] if json is None else [(pdf, ".pdf"), (json, ".json")]
    for to, ending in places:
        _check_place(to, ending)
    contents = {pdf: card_pdf(layout)}
    if json is not None:
        contents[json] = card_json(layout).encode()
    _put(contents)


def _check_place(to: Path, ending: str) -> None:
    if to.is_dir() or not to.name:
        raise ShopTrouble(f"{to} is a folder.", do=f"Name a file, such as card{ending}.")
    if to.suffix.lower() != ending:
        raise ShopTrouble(
            f"“{to.name}” does not end in {ending}.", do=f"Let the name end in {ending}."
        )
    if not to.parent.is_dir():
        raise ShopTrouble(f"There is no folder {to.parent}.", do="Make it, or choose another one.")
    if to.exists() and not to.is_file():
        raise ShopTrouble(f"{to} is a device or a pipe.", do="Name a file.")


def _put(contents: Mapping[Path, bytes]) -> None:
    """Put all files in their places: each is written beside its place, then all are renamed."""
    with ExitStack() as tidy:
        ready = []
        for to, content in contents.items():
            beside = to.with_name(f".{to.name}.{os.getpid()}.part")
            try:
                tidy.callback(beside.unlink, missing_ok=True)
                with beside.open("wb") as file:
                    file.write(content)
                    file.flush()
                    os.fsync(file.fileno())
            except OSError as error:
                raise _not_written(to, error) from error
            ready.append((beside, to))
        for beside, to in ready:
            try:
                beside.replace(to)
            except OSError as error:
                raise _not_written(to, error) from error


def _not_written(to: Path, error: OSError) -> ShopTrouble:
    return ShopTrouble(
        f"{to} was not written: {error.strerror or error}.",
        kept="A file that was there is as it was.",
        do="Close it where it is open, or choose another place.",
    )
