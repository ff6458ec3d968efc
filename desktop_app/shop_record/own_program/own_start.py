"""How this program starts itself: by Python, or as what was built for computers without Python."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

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


def start_anew() -> int:
    """Start the program once more, as it was started; where that returns, this one is to end."""
    order = [sys.executable, *sys.orig_argv[1:]]
    # One that was built would take the new one for a process of its own.
    environment = {**os.environ, "PYINSTALLER_RESET_ENVIRONMENT": "1"}
    if os.name != "nt":
        os.execve(order[0], order, environment)
    subprocess.Popen(order, env=environment)
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
