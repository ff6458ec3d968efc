"""Reading the shop's printed cards back from the record."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from sqlalchemy import Connection, RowMapping, select

from desktop_app.part_photos.bench_card.card_file import read_card
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.print_scale import PrintScale, print_scale, print_words
from desktop_app.part_photos.bench_card.ruler_length import is_near
from desktop_app.part_photos.kept_json import kept_figure
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.shop_record.kept_value import damaged, kept_day
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class PrintedCardKept:
    """One printed card: its layout as it was then, and what a calliper read on its ruler."""

    id: int
    layout: CardLayout
    printed_at: str
    measured_mm: float | None
    measured_on: date | None
    in_use: bool

    @property
    def printed_on(self) -> date:
        """The day on which it was printed."""
        return kept_day(self.printed_at)

    @property
    def print_scale(self) -> PrintScale:
        """How large it came out of the printer, and how surely that is known."""
        return print_scale(self.measured_mm, self.layout.check_length_mm)

    def words(self, length_unit: str = "mm") -> str:
        """Return which print it is and how long its ruler, in a few words."""
        return print_words(self.id, self.measured_mm, self.measured_on, length_unit)


def printed_cards(
    connection: Connection, *, also_put_away: bool = False
) -> tuple[PrintedCardKept, ...]:
    """Return the printed cards that are in use, the latest first; those put away too if asked."""
    asked = select(PrintedCard.__table__).order_by(PrintedCard.id.desc())
    if not also_put_away:
        asked = asked.where(PrintedCard.in_use == 1)
    return tuple(_card(row) for row in connection.execute(asked).mappings())


def printed_card(connection: Connection, card_id: int) -> PrintedCardKept:
    """Return one printed card, put away or not; a ShopTrouble where there is none."""
    asked = select(PrintedCard.__table__).where(PrintedCard.id == card_id)
    row = connection.execute(asked).mappings().first()
    if row is None:
        raise ShopTrouble(
            "That printed card is not in the record any more.",
            do="It was taken back at another desk or undone; look at the page again.",
        )
    return _card(row)


def _card(row: RowMapping) -> PrintedCardKept:
    try:
        layout = read_card(row["layout"], "shop.sqlite")
    except ShopTrouble as error:
        raise damaged(row["layout"], f"the layout of bench card {row['id']}") from error
    try:
        measured_mm = kept_figure(row["measured_mm"])
        if measured_mm is not None and not is_near(measured_mm, layout.check_length_mm):
            raise ValueError("not near its nominal length")
    except ValueError as error:
        raise damaged(row["measured_mm"], f"the ruler of bench card {row['id']}") from error
    measured_on = row["measured_on"]
    return PrintedCardKept(
        id=row["id"],
        layout=layout,
        printed_at=row["printed_at"],
        measured_mm=measured_mm,
        measured_on=None if measured_on is None else kept_day(measured_on),
        in_use=bool(row["in_use"]),
    )
