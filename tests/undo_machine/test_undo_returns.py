"""What is said of returns, customers and promises can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class Returns(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["returns"]


Returns.TestCase.settings = SETTINGS
TestReturns = Returns.TestCase
