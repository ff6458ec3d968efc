"""Which instrument a typed name means: a usual one may be called by its translated name."""

from __future__ import annotations

from desktop_app.parts_compared.instruments.instrument import USUAL_INSTRUMENTS, tool_words


def tool_called(typed: str) -> str:
    """Return the name that is kept: that of the usual instrument so called, else as typed."""
    said = " ".join(typed.split())
    for name in USUAL_INSTRUMENTS:
        if said.casefold() == tool_words(name).casefold() != name.casefold():
            return name
    return typed
