"""How this program starts itself: by Python, or as what was built for computers without Python."""

from __future__ import annotations

import logging
import os
import subprocess
import sys
from pathlib import Path

import desktop_app
from desktop_app.language import VARIABLE, tr

#: The word before a module that runs in a process of its own; only a built program knows it.
OWN_MODULE = "--own-module"
_OURS = ("desktop_app.", "demo_shop.")


def is_built() -> bool:
    """Tell whether this is a program that was built, and brings its own Python along."""
    return bool(getattr(sys, "frozen", False))


def program_order(*said: str) -> list[str]:
    """Return the order that starts this program anew with these words."""
    if is_built():
        return [str(_built_program()), *said]
    return [sys.executable, "-P", "-m", "desktop_app", *said]


def module_order(module: str, *said: str) -> list[str]:
    """Return the order that runs one module of this program alone, with these words."""
    if is_built():
        return [str(_built_program()), OWN_MODULE, module, *said]
    return [sys.executable, "-P", "-m", module, *said]


def search_path() -> str:
    """Return where a Python that is started by this program finds it, wherever it is started."""
    package = str(Path(desktop_app.__file__).resolve().parents[1])
    return os.pathsep.join([package, *filter(None, [os.environ.get("PYTHONPATH")])])


def start_anew(folder: Path | None = None) -> int:
    """Start the program once more; where that returns, this one is to end with the status.

    It opens this shop, or the last one of one's own, and speaks what is chosen on this computer:
    what the environment said of a language is not handed on.
    """
    shop = () if folder is None else ("--shop", str(folder))
    order = [sys.executable, *shop] if is_built() else program_order(*shop)
    known = {name: value for name, value in os.environ.items() if name != VARIABLE}
    # One that was built would take the new one for a process of its own.
    said = {**known, "PYTHONPATH": search_path(), "PYINSTALLER_RESET_ENVIRONMENT": "1"}
    try:
        if os.name != "nt":
            os.execve(order[0], order, said)
        subprocess.Popen(order, env=said)
    except OSError as error:
        words = tr("The program could not be started anew: {why}. Start it by hand.", why=error)
        logging.getLogger(__name__).error(words)
        return 1
    return 0


def asked_module(words: list[str]) -> str | None:
    """Take the module out of the words that a built program was started with; None without one."""
    if words[1:2] != [OWN_MODULE] or len(words) < 3 or not words[2].startswith(_OURS):
        return None
    module = words[2]
    del words[1:3]
    return module


def _built_program() -> Path:
    """On Windows the window's program has no console, and so no pipes: the other one has both."""
    running = Path(sys.executable)
    return running.with_name(f"benchwitness{running.suffix}")
