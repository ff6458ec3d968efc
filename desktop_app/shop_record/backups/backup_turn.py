"""One at a time: of two windows that would back a shop up into the same folder one waits."""

from __future__ import annotations

import time
from collections.abc import Generator
from pathlib import Path
from typing import BinaryIO

from desktop_app.language import tr
from desktop_app.shop_record.own_program.held_file import hold
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

_FILE = ".one-at-a-time"
_LOOK_S = 0.1


class AnothersTurn(ShopTrouble):
    """Another window or program is backing the shop up just now."""


def my_turn(base: Path, *, waits: bool) -> Generator[Step, None, BinaryIO]:
    """Take the turn at a folder of generations; it ends when what is returned is closed.

    Who doesn't wait is told by `AnothersTurn`. Raises OSError where the folder can't be written.
    """
    while (turn := hold(base / _FILE)) is None:
        if not waits:
            raise AnothersTurn(tr("Another window is backing the shop up."))
        yield Step(0, 100, tr("Waiting for another window, which is backing the shop up"))
        time.sleep(_LOOK_S)
    return turn
