"""Why one file of a drop was not taken in."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

LONGEST_NAME = 200
SMALLER = tr("Send a smaller one.")


class Unfit(Exception):
    """Bytes that are no usable photo, whatever their name: the reason and what to do."""

    def __init__(self, reason: str, do: str = "") -> None:
        super().__init__(reason)
        self.reason = reason
        self.do = do


class PhotoTrouble(ShopTrouble):
    """A file that is no usable photo: its name and the reason, as one sentence."""

    def __init__(self, name: str, reason: str, do: str = "") -> None:
        self.name = shown_name(name)
        self.reason = reason
        super().__init__(f"{self.name}: {reason}", do=do)


def shown_name(name: str) -> str:
    """Return a file's own name without its folders, on one line, at most 200 characters."""
    last = name.replace("\\", "/").rstrip("/").rpartition("/")[2]
    plain = "".join(each if each.isprintable() else "\ufffd" for each in last).strip()
    return (plain or "photo")[:LONGEST_NAME]
