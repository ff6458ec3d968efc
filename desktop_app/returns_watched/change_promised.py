"""What the shop promised to do differently after a return, and how far that has come."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop_app.language import tr
from desktop_app.shop_record.kept_value import LAST_KEPT, OLDEST_KEPT
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class ChangePromised:
    """A change in the shop's own words; who does it, until when, done when, looked at when."""

    words: str = ""
    by: str = ""
    due: date | None = None
    done_on: date | None = None
    check_on: date | None = None

    @property
    def is_said(self) -> bool:
        """True where anything was promised."""
        return bool(
            self.words.strip() or self.by.strip() or self.due or self.done_on or self.check_on
        )

    def is_open(self, today: date) -> bool:
        """True until it is done, and again from the day on which to look whether it helped.

        That day is emptied, or moved on, once somebody has looked.
        """
        if not self.is_said:
            return False
        return self.done_on is None or (self.check_on is not None and self.check_on <= today)

    def is_late(self, today: date) -> bool:
        """True where it is not done and its day has passed."""
        return self.done_on is None and self.due is not None and self.due < today

    def state(self, today: date) -> str:
        """Say how far it has come, as one sentence; empty where nothing was promised."""
        if not self.is_said:
            return ""
        if self.done_on is None:
            if self.due is None:
                return tr("Not done yet; no day was named.")
            days = (today - self.due).days
            if days > 0:
                one = days == 1
                return (
                    tr("Not done, 1 day late.")
                    if one
                    else tr("Not done, {days} days late.", days=days)
                )
            return tr("Not done yet, due on {due}.", due=self.due.isoformat())
        day = self.done_on.isoformat()
        if self.check_on is None:
            return tr("Done on {day}.", day=day)
        if self.check_on <= today:
            return tr("Done on {day}. Look now whether it helped, then empty that day.", day=day)
        look_on = self.check_on.isoformat()
        return tr("Done on {day}, to be looked at on {look_on}.", day=day, look_on=look_on)


def read_day(text: str) -> date | None:
    """Return a typed day; None for an empty field. Raises ShopTrouble for anything else."""
    bare = text.strip()
    if not bare:
        return None
    try:
        day = date.fromisoformat(bare)
    except ValueError:
        day = None
    if day is None or day.isoformat() != bare or not OLDEST_KEPT <= day <= LAST_KEPT:
        raise ShopTrouble(
            tr("“{typed}” is not a day.", typed=bare), do=tr("Type it like 2026-11-16.")
        )
    return day
