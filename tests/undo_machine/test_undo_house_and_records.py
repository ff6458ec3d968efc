"""House rules, own phrases and imports can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class HouseAndRecords(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["house_and_records"]


HouseAndRecords.TestCase.settings = SETTINGS
TestHouseAndRecords = HouseAndRecords.TestCase
