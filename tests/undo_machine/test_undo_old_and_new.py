"""What is done with pairs, sums and money owed can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class OldAndNew(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["old_and_new"]


OldAndNew.TestCase.settings = SETTINGS
TestOldAndNew = OldAndNew.TestCase
