"""What is done with instruments, studies and part kinds can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class ToolsAndKinds(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["tools_and_kinds"]


ToolsAndKinds.TestCase.settings = SETTINGS
TestToolsAndKinds = ToolsAndKinds.TestCase
