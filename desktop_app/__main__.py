"""Starts the program: the window, or a command from the shell."""

from __future__ import annotations

import gc
import os
import sys
from typing import TYPE_CHECKING

from desktop_app.language import VARIABLE, code_spoken, tr

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from desktop_app.shop_record.trouble import ShopTrouble


def main(argv: list[str] | None = None) -> int:
    """Carry out the command line; without a command open the window."""
    # Nothing here multiplies large matrices, and numpy's threads for that cost half of its loading.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    from desktop_app.commands.command_line import run

    return run(sys.argv[1:] if argv is None else argv, _open_window, _draw_window, _speak_for)


def _open_window(folder: Path | None, say: Callable[[], ShopTrouble] | None = None) -> int:
    from desktop_app.commands.demo import has_screen

    if not has_screen():
        sys.stderr.write(tr("There is no screen here: the window cannot be opened.") + "\n")
        return 3
    # Nothing made while starting is garbage; the program switches this on with its first page.
    gc.disable()
    from desktop_app.shop_window.sources_unread import leave_sources_unread

    leave_sources_unread()
    _write_figures()
    trouble = _speak()
    if say is not None:
        trouble = say()  # in the language that is spoken now
    from desktop_app.program_started import open_window

    return open_window(folder, trouble)


def _draw_window(folder: Path, picture: Path) -> None:
    _write_figures()
    _tell(_speak())
    from desktop_app.program_started import draw_window

    draw_window(folder, picture)


def _speak_for(command: str) -> None:
    """Speak as the window in the demo, and in papers as the environment says; else English."""
    from desktop_app.commands.command_words import PAPERS

    if command == "demo":
        _speak()  # what hinders it is told where the window is opened or drawn
    elif command in PAPERS and os.environ.get(VARIABLE):
        from desktop_app.shop_window.own_language import language_said, speak_language

        _tell(speak_language(language_said()))


def _speak() -> ShopTrouble | None:
    """Speak the language of this computer, before the words of the window are loaded."""
    if code_spoken():
        return None
    from desktop_app.shop_window.own_language import speak_language, wanted_language

    return speak_language(wanted_language())


def _write_figures() -> None:
    """Write figures in the window, and on what it prints, as this computer does."""
    from desktop_app.figures_shown import speak_figures
    from desktop_app.shop_window.own_language import wanted_decimal_sign

    speak_figures(wanted_decimal_sign())


def _tell(trouble: ShopTrouble | None) -> None:
    if trouble is not None and sys.stderr is not None:
        sys.stderr.write(f"{trouble.sentence()}\n")


if __name__ == "__main__":
    sys.exit(main())
