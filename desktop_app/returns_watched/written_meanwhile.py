"""What stands about a return by now, where a page showed something else and would write over it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date
from operator import attrgetter
from typing import Any

from desktop_app.figures_shown import shown
from desktop_app.language import tr
from desktop_app.returns_watched.judgement import Judgement, return_cause
from desktop_app.returns_watched.return_cost import AMOUNTS
from desktop_app.shop_record.written_meanwhile import WrittenMeanwhile

# What a deed may write over, by its place in what is kept, with its name on the page.
NAMES: Mapping[str, str] = {
    "judgement": tr("What it is"),
    "judged_by": tr("Judged by"),
    "same_vehicle": tr("Same vehicle"),
    "also": tr("As well"),
    "why": tr("Why"),
    "evidence": tr("What it rests on"),
    "first_view": tr("First repairer's own view"),
    "second_look": tr("Second look"),
    "cause_class": tr("Main cause"),
    "helping": tr("What helped it along"),
    "dangerous": tr("Dangerous"),
    "cost.unbilled_hours": tr("Hours nobody pays"),
    **{f"cost.{name}": words for name, words in AMOUNTS.items()},
    "change.words": tr("What will be done differently"),
    "change.by": tr("Who does it"),
    "change.due": tr("Due on"),
    "change.done_on": tr("Done on"),
    "change.check_on": tr("Look on whether it helped"),
}


def check_as_shown(wanted: str, shown: Any, now: Any, names: Iterable[str]) -> None:
    """Raise WrittenMeanwhile where what a page showed is not what stands there now.

    `shown` and `now` are what was kept about a return then and is kept now (a Judging, a LinkKept);
    `names` are among NAMES: what the deed `wanted` writes over, and what would stand beside it.
    """
    changed = [name for name in names if attrgetter(name)(shown) != attrgetter(name)(now)]
    if changed:
        said = (f"{NAMES[name]}: {_words(name, attrgetter(name)(now))}" for name in changed)
        raise WrittenMeanwhile(wanted, "; ".join(said) + _by(changed, now))


def _by(changed: list[str], now: Any) -> str:
    return (
        tr(" (judged by {who})", who=now.judged_by)
        if "judgement" in changed and now.judged_by
        else ""
    )


def _words(name: str, value: Any) -> str:
    if value is None or value == "" or value == ():
        return tr("emptied")
    if isinstance(value, bool):
        no = tr("no, two vehicles") if name == "same_vehicle" else tr("no")
        return tr("yes") if value else no
    if isinstance(value, tuple):
        return ", ".join(f"“{_one(each)}”" for each in value)
    if name.endswith("_cents"):
        return shown(f"{value // 100}.{value % 100:02d}")
    return f"“{_one(value)}”"


def _one(value: Any) -> str:
    if isinstance(value, Judgement):
        return tr(value.value)
    if isinstance(value, date):
        return value.isoformat()
    cause = return_cause(str(value))
    return str(value) if cause is None else cause.words
