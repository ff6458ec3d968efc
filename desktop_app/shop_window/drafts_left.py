"""Drafts that an earlier sitting left, of what was taken out of the record since.

As long as a program runs they stay: an undo brings back what was taken out, and with it what was
half typed there. They are let go when the shop is opened the next time.
"""

from __future__ import annotations

import re
from functools import partial

from desktop_app.language import tr
from desktop_app.shop_record.rows_gone import Row, rows_gone
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts

# What forms are called, and the table of the row that each hangs on; the others hang on none.
_HANGS_ON = (
    (re.compile(r"(?:explained|limits)-(\d+)-"), "pair"),
    (re.compile(r"(?:codes-.+|finding|caught-here|new-pair)-(\d+)$"), "job"),
    (re.compile(r"(?:odometer-out|customer-asked|refused)-(\d+)$"), "job"),
    (re.compile(r"refused-back-(\d+)-"), "job"),
    (re.compile(r"sum .+ of job (\d+)$"), "job"),
    (re.compile(r"car-event-(\d+)$"), "vehicle"),
    (re.compile(r"gauge study of instrument (\d+)$"), "instrument"),
)


def forget_left(desk: Desk) -> None:
    """Look beside the window which drafts hang on nothing any more, and let them go."""
    drafts, record = Drafts(desk.record.folder), desk.record
    rows = {form: row for form in drafts.forms() if (row := hangs_on(form)) is not None}
    if not rows:
        return

    def look() -> list[str]:
        with record.reading() as connection:
            gone = rows_gone(connection, rows.values())
        return [form for form, row in rows.items() if row in gone]

    desk.errands.run(tr("Looking over what was half typed"), look, partial(_let_go, drafts))


def hangs_on(form: str) -> Row | None:
    """Return the row that a form is about, or None."""
    for called, table in _HANGS_ON:
        found = called.match(form)
        if found:
            return table, int(found[1])
    return None


def _let_go(drafts: Drafts, gone: list[str]) -> None:
    if gone:
        drafts.forget(gone)
