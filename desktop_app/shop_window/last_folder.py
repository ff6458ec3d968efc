"""The folder in which files were last chosen on this computer, for each sort of them."""

from __future__ import annotations

from pathlib import Path

from desktop_app.shop_window.window_memory import window_memory


def last_folder(sought: str) -> str:
    """Return where such files were last chosen, "" where none were.

    Whether it is still there, the dialog sees: a drive that is away would be waited for here.
    """
    return str(window_memory().value(_key(sought), ""))


def keep_folder(sought: str, file: str) -> None:
    """Remember the folder of a file that was chosen."""
    memory = window_memory()
    memory.setValue(_key(sought), str(Path(file).parent))
    memory.sync()


def _key(sought: str) -> str:
    return f"folders/{sought}"
