"""What a stranger may read of the log: where it went wrong, and nothing that a shop has typed.

What an error says may quote a customer, so of each error its kind alone stays; of all other lines
those that the program words itself, up to the first thing that they quote or place they name.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from desktop_app.language import tr

_HEAD = re.compile(r"(\d{4}-\d\d-\d\d \d\d:\d\d:\d\d),\d{3} ([A-Z]+) (.*)")
_FRAME = re.compile(r'  (?:  )*File "([^"]*)", line (\d+),? in ([\w<>.]+)')
_MARKS = re.compile(r"    [ ~^]+")
_KIND = re.compile(r"([A-Za-z_]\w*(?:\.\w+)*)(?::.*)?")
_QUOTED = re.compile(r"[\"“‘«/\\]|(?<!\w)'")
_BEGINS = "Traceback (most recent call last):"
_FIXED = (
    _BEGINS,
    "The above exception was the direct cause of the following exception:",
    "During handling of the above exception, another exception occurred:",
)
_FATAL = ("Fatal Python error:", "Current thread 0x", "Thread 0x")
_WORDED = ("not foreseen", "errand", "a request from the phone", "phone's photo", "Qt:")
_TOPS = ("desktop_app", "demo_shop", "site-packages", "PySide6", "sqlalchemy")


def told_lines(lines: Iterable[str]) -> Iterator[str]:
    """Give what may be told of the log's lines, and say how many were left out."""
    left_out = 0
    after = ""  # what stood before: a frame, whose line of code may follow, or its code
    kind_comes = False  # the kind of the error is what follows a trace
    for line in lines:
        told, before, after = None, after, ""
        if head := _HEAD.fullmatch(line):
            told, kind_comes = f"{head[1]} {head[2]} {_worded(head[3])}", False
        elif line in _FIXED or line.startswith(_FATAL):
            told, kind_comes = line, line == _BEGINS
        elif frame := _FRAME.fullmatch(line):
            told, after = f"  {_place(frame[1])}, line {frame[2]}, in {frame[3]}", "frame"
        elif before == "frame" and line.startswith("    "):
            told, after = line, "code"  # of the program: nothing of it was typed in the shop
        elif before == "code" and _MARKS.fullmatch(line):
            told = line
        elif kind_comes and (kind := _KIND.fullmatch(line)):
            told, kind_comes = tr("{kind} (what it says is left out)", kind=kind[1]), False
        elif line.strip():
            left_out += 1
        if told is not None:
            if left_out:
                yield tr("({lines} lines are left out)", lines=left_out)
                left_out = 0
            yield told
    if left_out:
        yield tr("({lines} lines are left out)", lines=left_out)


def _worded(message: str) -> str:
    if not message.startswith(_WORDED):
        return "…"
    plain = _QUOTED.split(message, maxsplit=1)[0].rstrip()
    return plain if plain == message else f"{plain} …"


def _place(file: str) -> str:
    """Return where a file lies in the program or in a library: not whose computer it is on."""
    parts = re.split(r"[/\\]", file)
    tops = [number for number, part in enumerate(parts) if part in _TOPS]
    return "/".join(parts[tops[0] :] if tops else parts[-1:])
