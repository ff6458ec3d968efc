"""Reading the shop's printed cards back from the record."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from sqlalchemy import Connection, RowMapping, select

from desktop_app.part_photos.bench_card.card_file import read_card
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.ruler_length import CALLIPER_U_MM, UNMEASURED_U
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
    def scale(self) -> float:
        """Measured over nominal length of its ruler; 1 where nobody measured it."""
        return 1.0 if self.measured_mm is None else self.measured_mm / self.layout.check_length_mm

    @property
    def scale_u(self) -> float:
        """The standard uncertainty of `scale`."""
        return (
            UNMEASURED_U
            if self.measured_mm is None
            else CALLIPER_U_MM / self.layout.check_length_mm
        )


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
        raise damaged(row["layout"], "a bench card's layout") from error
    measured_on = row["measured_on"]
    return PrintedCardKept(
        id=row["id"],
        layout=layout,
        printed_at=row["printed_at"],
        measured_mm=row["measured_mm"],
        measured_on=None if measured_on is None else kept_day(measured_on),
        in_use=bool(row["in_use"]),
    )
