"""`check`: is the shop's record whole, and is everything as it was written?"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.shop_record.checks.problem import Checked
    from desktop_app.shop_record.record import ShopRecord

_ANCHOR = re.compile(r"(?:[^\W\d]+ )?([1-9][0-9]{0,14})[:, ]+([0-9a-fA-F]{8,64})")


def check(asked: Asked) -> Outcome:
    """Check everything of a shop; status 1 where something is wrong that was not mended."""
    from desktop_app.shop_record.checks.problem import Checked, Problem
    from desktop_app.shop_record.trouble import ShopDamaged

    anchor = _anchor(asked.anchor)
    mended: list[str] = []
    try:
        with shop_of(asked) as record:
            checked = _checked(record, anchor)
            if asked.mend and not checked.ok:
                from desktop_app.commands.exporting import walked
                from desktop_app.commands.mending import mend

                mended = walked(mend(record, checked))
                checked = _checked(record, anchor) if mended else checked
    except ShopDamaged as damage:
        problem = Problem("the database", damage.what, True, damage.do)
        checked = Checked((problem,), 0, 0)
    photos, entries = checked.photos_checked, checked.history_entries_checked
    found = _some(len(checked.problems), "problem", "problems")
    lines = [f"Mended: {one}" for one in mended]
    lines.append(
        f"{_some(photos, 'photo', 'photos')} and "
        f"{_some(entries, 'history entry', 'history entries')} checked: "
        f"{'all is whole' if checked.ok else found}."
    )
    lines.extend(f"{p.where}: {p.what} {p.do}" for p in checked.problems)
    lines.extend(f"Also: {note}" for note in checked.notes)
    said = checked.as_json() | ({"mended": mended} if asked.mend else {})
    return Outcome(said, tuple(lines), 0 if checked.ok else 1)


def _some(number: int, one: str, many: str) -> str:
    return f"{number:,} {one if number == 1 else many}"


def _checked(record: ShopRecord, anchor: tuple[int, str] | None) -> Checked:
    from desktop_app.commands.exporting import walked
    from desktop_app.commands.whole_check import whole_check
    from desktop_app.shop_record.checks.anchor_check import anchor_problem

    checked = walked(whole_check(record))
    if anchor is None:
        return checked
    with record.reading() as connection:
        wrong = tuple(anchor_problem(connection, *anchor))
    return replace(checked, problems=(*checked.problems, *wrong))


def _anchor(said: str | None) -> tuple[int, str] | None:
    """Read an anchor as it is printed, “history 4211, 1f2e…”; a colon between does as well."""
    if said is None:
        return None
    found = _ANCHOR.fullmatch(said.strip().rstrip("…"))
    if found is None:
        raise ShopTrouble(
            f"--anchor: “{said[:60]}” is no anchor.",
            do="Accepted: a number and a hash as they are printed on a sheet, such as "
            "4211:1f2e3d4c5b6a7988.",
        )
    return int(found[1]), found[2].lower()
