"""Days that are said to a command by an option, such as --since."""

from __future__ import annotations

from datetime import date

from desktop_app.commands.outcome import Asked
from desktop_app.shop_record.trouble import ShopTrouble

FIRST_YEAR, LAST_YEAR = 1900, 2200


def span_said(asked: Asked) -> tuple[date | None, date | None]:
    """Return the days of --since and --until in their order; None is an open end."""
    since, until = day_said("--since", asked.since), day_said("--until", asked.until)
    if since is not None and until is not None and since > until:
        raise ShopTrouble(
            f"--since {since.isoformat()} is later than --until {until.isoformat()}.",
            do="Swap the two days.",
        )
    return since, until


def day_said(option: str, text: str | None) -> date | None:
    """Return the day of an option; a ShopTrouble says what is accepted."""
    if text is None:
        return None
    try:
        day = date.fromisoformat(text)
        # ISO weeks and days without dashes are read too, and mean what few would guess.
        if day.isoformat() != text:
            raise ValueError(text)
    except ValueError as error:
        raise ShopTrouble(
            f"{option}: '{text}' is not a day.", do="Accepted: a date like 2026-11-16."
        ) from error
    if not FIRST_YEAR <= day.year <= LAST_YEAR:
        raise ShopTrouble(
            f"{option}: {text} lies too far off.",
            do=f"Accepted: a date of the years {FIRST_YEAR} to {LAST_YEAR}.",
        )
    return day
