"""Whose promise a job gets at its hand-over: its own, a part kind's, or the shop's."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.returns_watched.month_end import days_of_months, most_days_of_months
from desktop_app.returns_watched.window import EndsBy, Window
from desktop_app.shop_record.trouble import ShopTrouble

MOST_DAYS, MOST_MONTHS, MOST_MILES = 3650, 120, 200_000
# Whose promise a window is, as it is kept with the job; a part kind's is "part kind " and its id.
FROM_JOB, FROM_SHOP, FROM_KIND = "job", "shop", "part kind "
_DAYS, _MONTHS, _MILES = tr("days"), tr("months"), tr("miles")


@dataclass(frozen=True, slots=True)
class Promise:
    """What is promised before anyone knows the day: days or calendar months, and miles.

    None is no such limit. Raises ShopTrouble where there is no limit at all, both days and months,
    or one out of bounds.
    """

    days: int | None = None
    months: int | None = None
    miles: int | None = None
    rule: EndsBy = "first"

    def __post_init__(self) -> None:
        for what, value, most in (
            (_DAYS, self.days, MOST_DAYS),
            (_MONTHS, self.months, MOST_MONTHS),
            (_MILES, self.miles, MOST_MILES),
        ):
            if value is not None and not 1 <= value <= most:
                raise ShopTrouble(
                    tr("A window of {number} {units} cannot be kept.", number=value, units=what),
                    do=tr(
                        "Accepted: 1 to {most:,} {units}, or nothing for no such limit.",
                        most=most,
                        units=what,
                    ),
                )
        if self.days is not None and self.months is not None:
            raise ShopTrouble(
                tr("Days or months?"), do=tr("Say one of them; the other stays empty.")
            )
        if self.days is None and self.months is None and self.miles is None:
            raise ShopTrouble(
                tr("A window without any limit never ends."), do=tr("Say days, months or miles.")
            )

    @property
    def most_days(self) -> int:
        """The most days that it can last, whenever the car leaves; 0 without a limit in time."""
        if self.months is not None:
            return most_days_of_months(self.months)
        return self.days or 0

    def window_from(self, handed_over_on: date) -> Window:
        """Return the window of a job handed over on a day; months are counted out in days."""
        days = self.days or 0
        if self.months is not None:
            days = days_of_months(handed_over_on, self.months)
        return Window(days, self.miles or 0, self.rule)

    def in_words(self) -> str:
        """Return the promise as a person says it: "24 calendar months or 12,000 miles, …"."""
        limits = []
        for value, one, many in (
            (self.months, tr("calendar month"), tr("calendar months")),
            (self.days, tr("day"), _DAYS),
            (self.miles, tr("mile"), _MILES),
        ):
            if value is not None:
                limits.append(f"{figure(value, ',')} {one if value == 1 else many}")
        if len(limits) == 1:
            return limits[0]
        time, far = limits
        if self.rule == "first":
            return tr("{time} or {far}, whichever ends first", time=time, far=far)
        return tr("{time} and {far}, until both have ended", time=time, far=far)


@dataclass(frozen=True, slots=True)
class Promised:
    """The window that a job is handed over with, the months it was counted from, and whose it is.

    `said_by` is "shop", "job", or "part kind " and the kind's id.
    """

    window: Window
    months: int | None
    said_by: str


def promise_of(days: int, months: int, miles: int, rule: str) -> Promise:
    """Return the promise that is kept as numbers, 0 for no such limit; months count before days."""
    return Promise(
        days=None if months else days or None,
        months=months or None,
        miles=miles or None,
        rule="both" if rule == "both" else "first",
    )


def promised(
    handed_over_on: date, kinds: Iterable[str], by_kind: Mapping[str, Promise], shop: Promise
) -> Promised:
    """Return what a job with parts of these kinds is promised on the day of its hand-over.

    Each part has its kind's promise, or the shop's where the kind has none; of several the longest
    counts: the one that ends last, then the one that goes farthest. A window without a limit in
    time, or where time and distance must both end, is longer than any that ends with its days.
    """
    found = [
        Promised(promise.window_from(handed_over_on), promise.months, said_by)
        for said_by, promise in _promises(kinds, by_kind, shop)
    ]
    return max(found, key=lambda one: _length(one.window))


def months_in_words(months: int) -> str:
    """Return so many months as people say it; by the calendar, so that nobody counts 30 days."""
    return tr("1 calendar month") if months == 1 else tr("{months} calendar months", months=months)


def promise_words(said_by: str | None, months: int | None) -> str:
    """Return in a sentence whose promise a job's window is; nothing where nobody knows."""
    said_as = tr(", said as {months}", months=months_in_words(months)) if months else ""
    if said_by == FROM_JOB:
        return tr("It was given to this job alone{said_as}.", said_as=said_as)
    if said_by == FROM_SHOP:
        return tr("It is the shop's promise{said_as}.", said_as=said_as)
    if said_by is not None and said_by.startswith(FROM_KIND):
        return tr(
            "It is the promise for {part_kind}{said_as}.",
            part_kind=kind_words(said_by.removeprefix(FROM_KIND)),
            said_as=said_as,
        )
    return ""


def _promises(
    kinds: Iterable[str], by_kind: Mapping[str, Promise], shop: Promise
) -> list[tuple[str, Promise]]:
    named = sorted(set(kinds))
    found = [(FROM_KIND + kind, by_kind[kind]) for kind in named if kind in by_kind]
    if not found or any(kind not in by_kind for kind in named):
        found.insert(0, (FROM_SHOP, shop))
    return found


def _length(window: Window) -> tuple[bool, float, float]:
    forever = float("inf")
    return window.may_stay_open, window.days or forever, window.miles or forever
