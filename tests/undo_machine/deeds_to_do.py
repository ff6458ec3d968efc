"""How a deed gets plausible arguments: what a desk sees of the shop, and what a person types."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any, NamedTuple, TypeVar

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import Kept
from desktop_app.shop_record.written_meanwhile import Shown
from tests.undo_machine.whole_state import Row, State

T = TypeVar("T")
Pick = Callable[[int], int]  # one of so many, counted from 0
GONE = 987_654  # an id that no row has: it was taken out at another desk

WORDS = (
    *("Rotor tip burned back.", "stalls when damp", "misfires when cold", "", "  "),
    *("läuft unrund – 漢字 🙂", "=1+1 <b>bold</b>", "two\nlines", "x" * 3000),
)
ODD_WORDS = "a\x00b"  # what a paste may bring
READINGS = (None, 0, 900, 50_000, 50_400, 9_999_999, 10_000_000, -1)
HOURS = (None, 0.0, 0.25, 1.5, 10_000.0, 10_000.5, -1.0, float("nan"), float("inf"))
CENTS = (None, 0, 1, 12_345, 100_000_000, 10**12, -5)
LENGTHS = (0.0, 0.02, 12.5, 150.3, -3.0, 1e12, float("nan"))


class Given(NamedTuple):
    """What a deed is called with, after the record."""

    args: tuple[Any, ...]
    named: dict[str, Any]


def using(*args: Any, **named: Any) -> Given:
    """Give arguments as a call has them."""
    return Given(args, named)


@dataclass(frozen=True, slots=True)
class Seen:
    """The shop as a person at one desk sees it; every choice is picked by `pick`."""

    record: ShopRecord
    state: State
    pick: Pick

    def of(self, choices: Sequence[T]) -> T:
        """Choose one of these."""
        return choices[self.pick(len(choices))]

    def some(self, choices: Sequence[T]) -> tuple[T, ...]:
        """Choose up to three of these."""
        return tuple(self.of(choices) for _ in range(self.pick(4)))

    def yes(self) -> bool:
        """Say yes or no."""
        return self.pick(2) == 1

    def words(self) -> str:
        """Type something; seldom what no text can hold."""
        return ODD_WORDS if self.pick(40) == 39 else self.of(WORDS)

    def rows(self, kept: type[Kept], **values: Any) -> list[int]:
        """The ids of rows that have these values."""
        rows = self.state[kept.__tablename__]
        return [i for i, row in rows.items() if all(row[n] == v for n, v in values.items())]

    def one(self, kept: type[Kept], **values: Any) -> int:
        """Choose a row that has these values, seldom one that is gone."""
        return self.of([*self.rows(kept, **values), GONE])

    def row(self, kept: type[Kept], row_id: int) -> Row:
        """What stands in a row; nothing where it is gone."""
        return self.state[kept.__tablename__].get(row_id, {})

    def shown(self, kept: type[Kept], row_id: int, *columns: str) -> Shown[Any] | None:
        """What the page showed there: what stands there now, something older, or nobody looked."""
        row = self.row(kept, row_id)
        now = tuple(row.get(name) for name in columns)
        return self.of([None, Shown(now[0] if len(now) == 1 else now), Shown("as it was before")])

    def now(self) -> datetime:
        """What the clock on the wall says."""
        return self.record.clock()

    def day(self) -> date:
        """A day of the last year or so, seldom one that is to come."""
        return self.now().date() - timedelta(days=self.pick(400) - 3)


Chooser = Callable[[Seen], Given]
Deeds = dict[Callable[..., Any], Chooser]
