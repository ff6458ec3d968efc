"""Trouble with a part-kind file, told so that a shop owner can mend it."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble


class KindTrouble(ShopTrouble):
    """A part kind can't be read: `file`, `line` (None where unknown) and what to write instead."""

    def __init__(self, file: str, line: int | None, what: str, do: str = "") -> None:
        where = tr("{file}, line {line}", file=file, line=line) if line else file
        super().__init__(f"{where}: {what}.", do=do)
        self.file = file
        self.line = line
