"""The hash of rows that came in bulk, also where the record has got more columns since."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from operator import itemgetter
from typing import Any

from desktop_app.shop_record.past.rows_hash import RowsHash

Row = Sequence[Any]

# What a later form of the record added to a table, the newest form first: rows that came in before
# were hashed without. All of it is empty in them.
LATER_COLUMNS: Mapping[str, tuple[tuple[str, ...], ...]] = {
    "job": (
        ("work", "search_hours"),
        ("window_months", "window_from", "fault_every", "fault_every_unit"),
    ),
    "visit": (("odometer_source",),),
    "return_link": (
        ("dangerous",),
        (
            *("also", "helping_causes", "evidence", "first_view", "second_look"),
            *("unbilled_hours", "parts_cents", "sublet_cents", "tow_cents", "loan_car_cents"),
            *("goodwill_cents", "recovered_cents"),
            *("change_by", "change_due", "change_done_on", "change_check_on"),
        ),
    ),
    "customer_asked": (
        ("source", "judgement", "judged_by", "judged_at", "why", "cause_class", "dangerous"),
    ),
    "mark": (
        (
            *("height_mm", "height_u_mm", "snapped", "value", "unit", "expanded_u", "budget"),
            "settings",
        ),
    ),
    "instrument": (("repeatability",),),
}


def names_then(table: str, names: Sequence[str], count: int) -> Sequence[str]:
    """Return the columns of the form in which a table had so many, in today's order.

    ValueError where it never had.
    """
    kept, gone = list(names), set[str]()
    for added in ((), *LATER_COLUMNS.get(table, ())):
        gone.update(added)
        kept = [name for name in names if name not in gone]
        if len(kept) == count:
            return kept
    raise ValueError(f"{table} never had {count} columns")


class HashOfForms:
    """The hashes of rows that come a few at a time, as each form of the record would have it.

    `names` are the table's columns, in the order of the rows' values.
    """

    def __init__(self, table: str, names: Sequence[str]) -> None:
        self._forms = [_Form(range(len(names)), ())]
        gone: set[str] = set()
        for added in LATER_COLUMNS.get(table, ()):
            gone.update(added)
            kept = [place for place, name in enumerate(names) if name not in gone]
            left = [place for place, name in enumerate(names) if name in gone]
            self._forms.append(_Form(kept, left))

    def take(self, rows: Sequence[Row]) -> None:
        """Take the next rows by id, each with all columns."""
        for form in self._forms:
            form.take(rows)
        self._forms[1:] = [form for form in self._forms[1:] if form.may_be]

    def now(self) -> str:
        """Return the hash in today's form, when the last row was taken."""
        return self._forms[0].hash.hexdigest()

    def holds(self, sha256: str) -> bool:
        """Tell whether these are the rows of a hash, in whichever form it was taken."""
        return any(form.hash.hexdigest() == sha256 for form in self._forms)


class _Form:
    """One form of the table: the places of its columns, and of those that came later."""

    def __init__(self, kept: Sequence[int], left: Sequence[int]) -> None:
        self.hash, self.may_be = RowsHash(), True
        self._kept, self._left = itemgetter(*kept), left

    def take(self, rows: Sequence[Row]) -> None:
        if not self._left:
            self.hash.take(rows)
            return
        self.may_be = not any(row[place] is not None for place in self._left for row in rows)
        if self.may_be:
            self.hash.take(list(map(self._kept, rows)))
