"""Trouble that was foreseen: said to the user in plain words, never as a traceback."""

from __future__ import annotations


class ShopTrouble(Exception):
    """Something foreseen went wrong: what happened and where, what was kept, what to do now.

    Everything that is not a ShopTrouble is a mistake of the program itself.
    """

    def __init__(self, what: str, kept: str = "", do: str = "") -> None:
        super().__init__(what)
        self.what = what
        self.kept = kept
        self.do = do

    def sentence(self) -> str:
        """Return the whole message as one line."""
        return " ".join(part for part in (self.what, self.kept, self.do) if part)

    def __str__(self) -> str:
        return self.sentence()


class NotSaved(ShopTrouble):
    """Something could not be saved: `kept` and `do` speak to who typed it in the window.

    `again` says to who gave a command what to do; a command has no fields that keep anything.
    """

    def __init__(self, what: str, kept: str = "", do: str = "", again: str = "") -> None:
        super().__init__(what, kept, do)
        self.again = again or do


class RecordBusy(NotSaved):
    """Somebody else writes: whoever tries again waits for them."""


class ShopDamaged(ShopTrouble):
    """The record itself is damaged, or is no record at all."""


class ShopUnwritable(ShopTrouble):
    """The shop can be looked at, and nothing can be saved in it."""
