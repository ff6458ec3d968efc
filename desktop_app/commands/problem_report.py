"""`problem-report`: what a shop can send when something went wrong, shown or written to a file."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.commands.named_file import at_home
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import VARIABLE, chosen_place, last_shop, open_place
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from pathlib import Path

    from desktop_app.shop_record.house_rules import HouseRules


def problem_report(asked: Asked) -> Outcome:
    """Show the report, and write it with --out; it needs no shop that can be opened."""
    from desktop_app.shop_record.own_program.problem_report import (
        make_report,
        report_text,
        write_report,
    )

    folder = _folder(asked.shop)
    pieces = make_report(folder, _rules(folder))
    if asked.out is None:
        return Outcome(pieces, report_text(pieces).splitlines())
    to = at_home(asked.out)
    write_report(pieces, to)
    lines = (f"Wrote {to}. It says:", *report_text(pieces).splitlines())
    return Outcome({"file": str(to), **pieces}, lines)


def _folder(said: str | None) -> Path | None:
    import os

    nowhere = not (said or os.environ.get(VARIABLE) or last_shop())
    return None if nowhere else chosen_place(said)


def _rules(folder: Path | None) -> HouseRules | None:
    from desktop_app.shop_record.house_rules import read_rules

    if folder is None:
        return None
    try:
        record = open_place(folder)
    except ShopTrouble:
        return None
    try:
        with record.reading() as connection:
            return read_rules(connection)
    except ShopTrouble:
        return None
    finally:
        record.close()
