"""Values as they come out of the record; one that nothing of ours has written is told as damage."""

from __future__ import annotations

from datetime import date

from desktop_app.shop_record.trouble import ShopDamaged


def kept_day(at: str) -> date:
    """Return the day of a kept moment or day; a ShopDamaged where it is none."""
    try:
        return date.fromisoformat(at[:10])
    except (ValueError, TypeError) as error:
        raise damaged(at, "a day") from error


def damaged(value: object, wanted: str) -> ShopDamaged:
    """Return the trouble of a kept value that isn't what it should be."""
    shown = str(value)[:40]
    return ShopDamaged(
        f"The shop's record holds “{shown}” where {wanted} should be: it was changed from outside.",
        kept="The file was left as it is.",
        do="Put your last good copy of shop.sqlite in its place.",
    )
