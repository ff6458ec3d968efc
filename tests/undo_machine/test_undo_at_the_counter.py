"""What is done at the counter can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class AtTheCounter(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["at_the_counter"]


AtTheCounter.TestCase.settings = SETTINGS
TestAtTheCounter = AtTheCounter.TestCase
