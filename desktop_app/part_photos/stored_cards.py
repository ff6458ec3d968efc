"""Reading the shop's printed cards back from the record."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from sqlalchemy import Connection, RowMapping, select

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_file import read_card
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.print_scale import PrintScale, print_scale, print_words
from desktop_app.part_photos.bench_card.ruler_length import is_near
from desktop_app.part_photos.kept_json import kept_figure
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.shop_record.kept_value import damaged, kept_day
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble


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


@dataclass(frozen=True, slots=True)
class DamagedCard:
    """A printed card whose row holds what nothing of ours has written: named, its print not known.

    It may lie in photos all the same, so it counts as a print that nobody measured.
    """

    id: int
    name: str
    in_use: bool

    @property
    def print_scale(self) -> PrintScale:
        """As of a print that nobody measured."""
        return PrintScale()

    def words(self, _length_unit: str = "mm") -> str:
        """Return which print it is, in a few words."""
        return tr("card {id}, damaged in the record", id=self.id)


AnyCard = PrintedCardKept | DamagedCard


def printed_cards(
    connection: Connection, *, also_put_away: bool = False
) -> tuple[PrintedCardKept, ...]:
    """Return the printed cards that are in use, the latest first; those put away too if asked.

    Damaged ones are left out: see `cards_by_id`.
    """
    found = (one for one in _cards(connection) if isinstance(one, PrintedCardKept))
    return tuple(one for one in found if one.in_use or also_put_away)


def layouts_printed(connection: Connection) -> tuple[CardLayout, ...]:
    """Return the layouts of all cards that the shop printed: a photo may show one put away."""
    cards = printed_cards(connection, also_put_away=True)
    return tuple(dict.fromkeys(card.layout for card in cards))


def prints_of(connection: Connection, layout: CardLayout) -> tuple[AnyCard, ...]:
    """Return all prints of a layout, the latest first: put away or damaged, a photo may show it."""
    return tuple(one for one in _cards(connection) if _is_of(one, layout))


def cards_by_id(connection: Connection) -> dict[int, AnyCard]:
    """Return all printed cards by their id, the latest first: put away and damaged ones too."""
    return {one.id: one for one in _cards(connection)}


def _cards(connection: Connection) -> Iterator[AnyCard]:
    asked = select(PrintedCard.__table__).order_by(PrintedCard.id.desc())
    for row in connection.execute(asked).mappings().all():
        try:
            yield _card(row)
        except ShopDamaged:
            yield DamagedCard(row["id"], str(row["name"]), bool(row["in_use"]))


def _is_of(card: AnyCard, layout: CardLayout) -> bool:
    """Tell whether a print has this layout; a damaged one only tells its name."""
    return card.name == layout.name if isinstance(card, DamagedCard) else card.layout == layout


def printed_card(connection: Connection, card_id: int) -> PrintedCardKept:
    """Return one printed card, put away or not; a ShopTrouble where there is none."""
    asked = select(PrintedCard.__table__).where(PrintedCard.id == card_id)
    row = connection.execute(asked).mappings().first()
    if row is None:
        raise ShopTrouble(
            tr("That printed card is not in the record any more."),
            do=tr("It was taken back at another desk or undone; look at the page again."),
        )
    return _card(row)


def _card(row: RowMapping) -> PrintedCardKept:
    try:
        layout = read_card(row["layout"], "shop.sqlite")
    except ShopTrouble as error:
        raise damaged(row["layout"], tr("the layout of bench card {id}", id=row["id"])) from error
    try:
        measured_mm = kept_figure(row["measured_mm"])
        if measured_mm is not None and not is_near(measured_mm, layout.check_length_mm):
            raise ValueError("not near its nominal length")
    except ValueError as error:
        raise damaged(
            row["measured_mm"], tr("the ruler of bench card {id}", id=row["id"])
        ) from error
    kept_day(row["printed_at"])
    measured_on = row["measured_on"]
    return PrintedCardKept(
        id=row["id"],
        layout=layout,
        printed_at=row["printed_at"],
        measured_mm=measured_mm,
        measured_on=None if measured_on is None else kept_day(measured_on),
        in_use=bool(row["in_use"]),
    )
