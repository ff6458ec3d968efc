"""A promise as it is typed in the shop's unit, and as it is said."""

from __future__ import annotations

import re

from desktop_app.figures_shown import GROUP, figure
from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, from_miles, to_miles
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.window import EndsBy
from desktop_app.shop_record.trouble import ShopTrouble

# A comma, or a space that does not break, sets thousands apart: "1,5" is no whole number.
_WHOLE = re.compile(r"[0-9]+|[0-9]{1,3}(?:[, ][0-9]{3})+")


def promise_typed(days: str, months: str, far: str, rule: EndsBy, unit: DistanceUnit) -> Promise:
    """Return the promise that was typed; an empty field is no such limit. Raises ShopTrouble."""
    distance = _whole(tr("distance"), far)
    miles = None if distance is None else round(to_miles(distance, unit))
    return Promise(_whole(tr("days"), days), _whole(tr("months"), months), miles, rule)


def shown_distance(miles: int, unit: DistanceUnit) -> int:
    """Return kept miles in the unit: of all whole numbers that would be kept so, the roundest."""
    exact = from_miles(miles, unit)
    for step in (1000, 100, 10):
        near = round(exact / step) * step
        if round(to_miles(near, unit)) == miles:
            return near
    return round(exact)


def promise_in_words(promise: Promise, unit: DistanceUnit) -> str:
    """Return a promise as a person says it: "24 calendar months or 12,000 miles, …".

    What is round in miles alone is said in them first: "3,000 miles (4,828 km)".
    """
    if unit == "mi" or promise.miles is None:
        return promise.in_words()
    shown = shown_distance(promise.miles, unit)
    said = f"{figure(shown, ',')} km"
    if shown % 10 and promise.miles % 100 == 0:
        said = tr("{miles:,} miles ({kilometres})", miles=promise.miles, kilometres=said)
    return promise.in_words().replace(_miles_said(promise.miles), said)


def _miles_said(miles: int) -> str:
    return Promise(miles=miles).in_words()


def _whole(what: str, text: str) -> int | None:
    typed = text.strip().replace("\u00a0", " ").replace(GROUP, " ")
    if not typed:
        return None
    number = re.sub("[, ]", "", typed)
    if not _WHOLE.fullmatch(typed) or len(number) > 9:
        raise ShopTrouble(
            tr("“{typed}” is not accepted for {field}.", typed=text.strip(), field=what),
            do=tr("Accepted: a whole number, such as 12,000, or nothing for no such limit."),
        )
    return int(number)
