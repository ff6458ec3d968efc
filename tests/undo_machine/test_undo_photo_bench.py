"""What is done on the photo bench can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class PhotoBench(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["photo_bench"]


PhotoBench.TestCase.settings = SETTINGS
TestPhotoBench = PhotoBench.TestCase
