"""Starts the program: the window, or a command from the shell."""

from __future__ import annotations

import gc
import os
import sys
from typing import TYPE_CHECKING

from desktop_app.language import VARIABLE, code_spoken, tr

if TYPE_CHECKING:
    from pathlib import Path


def main(argv: list[str] | None = None) -> int:
    """Carry out the command line; without a command open the window."""
    words = sys.argv[1:] if argv is None else argv
    # Commands speak English unless they are told otherwise; the demo is one that opens the window.
    if os.environ.get(VARIABLE) or words[:1] == ["demo"]:
        _speak()
    from desktop_app.commands.command_line import run

    return run(words, _open_window, _draw_window)


def _open_window(folder: Path | None) -> int:
    from desktop_app.commands.demo import has_screen

    if not has_screen():
        sys.stderr.write(tr("There is no screen here: the window cannot be opened.") + "\n")
        return 3
    # Nothing made while starting is garbage; the program switches this on with its first page.
    gc.disable()
    _speak()
    from desktop_app.program_started import open_window

    return open_window(folder)


def _speak() -> None:
    """Speak the language of this computer, before the words of the window are loaded."""
    if code_spoken():
        return
    from desktop_app.shop_window.own_language import speak_language, wanted_language

    speak_language(wanted_language())


def _draw_window(folder: Path, picture: Path) -> None:
    _speak()
    from desktop_app.program_started import draw_window

    draw_window(folder, picture)


if __name__ == "__main__":
    sys.exit(main())
