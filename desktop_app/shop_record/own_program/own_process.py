"""A module of the program run in a process of its own, that may be ended at any time."""

from __future__ import annotations

import os
import subprocess
from typing import Any

from desktop_app.figures_shown import decimal_sign
from desktop_app.language import code_spoken
from desktop_app.shop_record.own_program.own_start import module_order, search_path

_SPEAKING = "desktop_app.spoken_module"


def own_process(module: str, *said: str, **pipes: Any) -> subprocess.Popen[bytes]:
    """Start a module, and say some words to it; `pipes` are those of Popen, stdout is one.

    The module speaks the language that is spoken here, and writes figures alike.
    It reads what strangers sent: what the environment knows of a database is not handed on.
    Raises OSError where the computer starts no other process.
    """
    code, sign = code_spoken(), decimal_sign()
    known = {name: value for name, value in os.environ.items() if not name.startswith("PG")}
    return subprocess.Popen(
        module_order(_SPEAKING, code, sign, module, *said)
        if code or sign == ","
        else module_order(module, *said),
        env={**known, "PYTHONPATH": search_path(), "PYTHONUTF8": "1"},
        creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
        **{"stdout": subprocess.PIPE, **pipes},
    )
