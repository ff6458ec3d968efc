"""The shop's windows, read from its house rules."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from sqlalchemy import Connection

from desktop_app.returns_watched.stored_facts import Near
from desktop_app.returns_watched.window import Window, kept_window
from desktop_app.shop_record.house_rules import HouseRules, read_rules


@dataclass(frozen=True, slots=True)
class Promise:
    """The shop's main window, for jobs that have none of their own, and the long one beside it."""

    main: Window
    long: Window

    def near(self, day: date) -> Near:
        """Return which jobs can have a return that was opened on a day or later."""
        return Near(day, max(self.main.days, self.long.days))


def read_promise(connection: Connection) -> Promise:
    """Read the shop's windows from its house rules."""
    rules = read_rules(connection)
    return Promise(_main(rules), Window(rules.long_days, rules.long_miles))


def _main(rules: HouseRules) -> Window:
    return kept_window(rules.window_days, rules.window_miles, rules.window_rule)
