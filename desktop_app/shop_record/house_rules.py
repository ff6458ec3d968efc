"""The house rules: every setting of a shop with its default, its bounds and what it does."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields, replace
from dataclasses import field as _field
from pathlib import Path
from typing import Any, Literal, NamedTuple

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.kept_value import damaged
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.rule_words import rule_words
from desktop_app.shop_record.tables import Setting
from desktop_app.shop_record.trouble import ShopTrouble

NO_FOLDER = "none"


def _rule(
    default: Any,
    says: str,
    *,
    allowed: tuple[Any, ...] = (),
    bounds: Any = None,
    alone: bool = True,
) -> Any:
    meta = {"says": says, "allowed": allowed, "bounds": bounds, "alone": alone}
    return _field(default=default, metadata=meta)


@dataclass(frozen=True, slots=True)
class HouseRules:
    """What this shop decided once for all jobs; windows in days and miles, money in cents.

    A window of 0 days has no limit in time, one of 0 miles none in distance. Where the promise is
    said in calendar months, `window_days` are the most days that so many months can have.
    """

    shop_name: str = _rule(tr("Our shop"), tr("The name printed on sheets and reports."))
    length_unit: str = _rule(
        "mm",
        tr("How lengths are shown and read; what is kept is always mm."),
        allowed=("mm", "inch"),
    )
    distance_unit: str = _rule(
        "miles", tr("How distances are shown and read."), allowed=("miles", "km")
    )
    # The four of the promise are said together, for one alone may leave a window without an end.
    window_days: int = _rule(
        90,
        tr("The shop's promise in days after hand-over; 0 is no limit in time."),
        bounds=(0, 3660),
        alone=False,
    )
    window_months: int = _rule(
        0,
        tr("The calendar months that the promise's days come from; 0 where it is said in days."),
        bounds=(0, 120),
        alone=False,
    )
    window_miles: int = _rule(
        3000,
        tr("The shop's promise in miles after hand-over; 0 is no limit in distance."),
        bounds=(0, 200_000),
        alone=False,
    )
    window_rule: str = _rule(
        "first",
        tr("“first”: the window ends with whichever ends first; “both”: when both have ended."),
        allowed=("first", "both"),
        alone=False,
    )
    sale_ends_window: str = _rule(
        "no",
        tr(
            "“yes”: the window of a job ends when the vehicle is sold; “no”: it goes with "
            "the vehicle."
        ),
        allowed=("no", "yes"),
    )
    early_days: int = _rule(30, tr("The early window in days."), bounds=(1, 3650))
    early_miles: int = _rule(1000, tr("The early window in miles."), bounds=(1, 200_000))
    long_days: int = _rule(365, tr("The long window in days."), bounds=(1, 3650))
    long_miles: int = _rule(12_000, tr("The long window in miles."), bounds=(1, 200_000))
    ask_after_days: int = _rule(
        14,
        tr(
            "So many days after hand-over the customer is to be asked, where a fault came "
            "now and then and was not proved; common practice, no source."
        ),
        bounds=(1, 3650),
    )
    sure_percent: int = _rule(
        95,
        tr(
            "How sure a verdict on a measured dimension must be, in percent; less sure is "
            "“too close to tell”."
        ),
        bounds=(95, 99),
    )
    hour_cost_cents: int = _rule(
        6000,
        tr("What an hour of work costs the shop, for the cost of a return."),
        bounds=(0, 100_000),
    )
    names_in_book: str = _rule(
        "no",
        tr(
            "“yes”: the weekly book's sheet People says names (the owner's copy); “no”: it "
            "says A, B."
        ),
        allowed=("no", "yes"),
    )
    second_backup_folder: str = _rule(
        NO_FOLDER,
        tr(
            "A folder on another disk, such as a stick, that gets a backup a day too, "
            "whenever it is plugged in; “none”: the shop's own folder alone has them."
        ),
    )
    days_without_backup: int = _rule(
        7, tr("After so many days without a good backup the window says so."), bounds=(1, 365)
    )
    currency: str = _rule("$", tr("The sign before an amount of money."))
    paper: str = _rule("A4", tr("The paper of printed sheets."), allowed=("A4", "Letter"))
    look: str = _rule(
        "as the system",
        tr("Light or dark window, or one of high contrast."),
        allowed=("as the system", "light", "dark", "high contrast"),
    )
    text_size: int = _rule(12, tr("The size of the window's text in points."), bounds=(9, 24))

    @property
    def unit_of_distance(self) -> Literal["mi", "km"]:
        """The unit in which distances are shown and read."""
        return "km" if self.distance_unit == "km" else "mi"

    @property
    def confidence(self) -> float:
        """How sure a verdict must be, as a probability."""
        return self.sure_percent / 100


_OF_THE_WINDOW = {f.name for f in fields(HouseRules) if not f.metadata["alone"]}


class RuleSaid(NamedTuple):
    """One rule as the window shows it; `alone` is False where others are changed with it."""

    name: str
    says: str
    default: Any
    allowed: tuple[Any, ...]
    bounds: tuple[int, int] | None
    alone: bool


def all_rules() -> tuple[RuleSaid, ...]:
    """Return every rule in the order in which it is shown."""
    return tuple(RuleSaid(f.name, default=f.default, **f.metadata) for f in fields(HouseRules))


def read_rules(connection: Connection) -> HouseRules:
    """Read the shop's rules; what was never changed has its default."""
    known = {f.name: type(f.default) for f in fields(HouseRules)}
    kept = {
        name: _kept(value, known[name])
        for name, value in connection.execute(select(Setting.name, Setting.value))
        if name in known
    }
    return replace(HouseRules(), **kept)


def _kept(text: str, wanted: type) -> Any:
    try:
        value = json.loads(text)
    except ValueError as error:
        raise damaged(text, tr("a house rule")) from error
    if type(value) is not wanted or (isinstance(value, str) and not _is_unicode(value)):
        raise damaged(text, tr("a house rule"))
    return value


def hour_is_preset(rules: HouseRules) -> bool:
    """Tell whether an hour is taken at the price that the program comes with."""
    return rules.hour_cost_cents == HouseRules().hour_cost_cents


def change_rule(record: ShopRecord, name: str, value: Any) -> Done:
    """Change one house rule; a ShopTrouble says what is accepted where the value is not."""
    said = tr("Change the house rule “{words}”", words=rule_words(name))
    return change_rules(record, said, {name: value})


def change_rules(
    record: ShopRecord,
    words: str,
    values: Mapping[str, Any],
    first: Callable[[Deed], None] = lambda _deed: None,
) -> Done:
    """Change some house rules in one deed; refused as a whole where one cannot be.

    A promise that is said in days alone is no longer one in months. `first` may look at what
    stands, inside the same deed, and refuse it.
    """
    checked = {name: check_rule(name, value) for name, value in values.items()}
    if "window_days" in checked:
        checked.setdefault("window_months", 0)

    def work(deed: Deed) -> None:
        first(deed)
        if _OF_THE_WINDOW & checked.keys():
            _window_must_end(replace(read_rules(deed.connection), **checked))
        for name, value in checked.items():
            _keep(deed, name, value)

    return record.do(words, work)


def _window_must_end(rules: HouseRules) -> None:
    if not rules.window_days and not rules.window_miles:
        raise ShopTrouble(
            tr("A window without any limit never ends."), do=tr("Say days, months or miles.")
        )
    months = rules.window_months
    if months and not 28 * months <= rules.window_days <= 31 * months:
        raise ShopTrouble(
            tr(
                "{months} months and {days} days are two promises.",
                months=months,
                days=rules.window_days,
            ),
            do=tr("Say the shop's promise as a whole."),
        )


def _keep(deed: Deed, name: str, value: Any) -> None:
    row = deed.connection.execute(select(Setting.id).where(Setting.name == name)).scalar()
    if row is None:
        deed.add(Setting, name=name, value=json.dumps(value))
    else:
        deed.change(Setting, row, value=json.dumps(value))


def check_rule(name: str, value: Any) -> Any:
    """Return the value in the rule's own type; a ShopTrouble says what is accepted."""
    rule = next((r for r in all_rules() if r.name == name), None)
    if rule is None:
        raise ShopTrouble(tr("There is no house rule “{name}”.", name=name))
    words = tr(name.replace("_", " "))
    if rule.allowed and value not in rule.allowed:
        accepted = tr(" or ").join(str(a) for a in rule.allowed)
        raise ShopTrouble(
            tr("“{value}” is not accepted for {words}.", value=value, words=words),
            do=tr("Accepted: {accepted}.", accepted=accepted),
        )
    if isinstance(rule.default, int):
        return _whole(words, value, rule.bounds)
    text = str(value).strip()
    if not _is_unicode(text):
        raise ShopTrouble(
            tr("The {words} holds a sign that no text can.", words=words), do=tr("Type it again.")
        )
    if not text or len(text) > 200:
        raise ShopTrouble(tr("The {words} needs 1 to 200 characters.", words=words))
    if name == "second_backup_folder" and text != NO_FOLDER and not Path(text).is_absolute():
        raise ShopTrouble(
            tr("“{value}” is not accepted for {words}.", value=text, words=words),
            do=tr("Accepted: the whole path of a folder, or “{none}”.", none=NO_FOLDER),
        )
    return text


def _is_unicode(text: str) -> bool:
    """Tell whether a text can be written down; half of a pair of UTF-16 alone cannot."""
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return True


def _whole(words: str, value: Any, bounds: tuple[int, int] | None) -> int:
    low, high = bounds or (0, 2**31)
    try:
        number = int(str(value).strip())
    except ValueError:
        number = low - 1
    if not low <= number <= high:
        raise ShopTrouble(
            tr("“{value}” is not accepted for {words}.", value=value, words=words),
            do=tr("Accepted: a whole number, {low} to {high}.", low=low, high=high),
        )
    return number
