"""What is done to prove a repair can be taken back in any order."""

from __future__ import annotations

from tests.undo_machine.rooms import ROOMS
from tests.undo_machine.undo_machine import SETTINGS, UndoMachine


class Proof(UndoMachine):
    """The deeds of this room more often than all others."""

    room = ROOMS["proof"]


Proof.TestCase.settings = SETTINGS
TestProof = Proof.TestCase
