"""A computer's clock that is behind the history: days and windows would come out wrong."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.shop_record.kept_value import kept_moment
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble


def clock_behind(connection: Connection, now: datetime) -> ShopTrouble | None:
    """Return what to say where today lies before the day of the last history entry, or None."""
    at = connection.execute(
        select(HistoryEntry.at).order_by(HistoryEntry.seq.desc()).limit(1)
    ).scalar()
    if at is None:
        return None
    last = kept_moment(at).date()
    if now.date() >= last:
        return None
    return ShopTrouble(
        tr(
            "This computer's clock says {day}, but the last entry of the shop's record "
            "was written on {last}.",
            day=now.date().isoformat(),
            last=last.isoformat(),
        ),
        do=tr("Set the clock right: days, windows and hand-overs are counted from it."),
    )
