"""A language in which each text is said in quotation marks, for what must not hang on any."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from desktop_app.language import speak
from desktop_app.parts_compared import stored_sets
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind


@contextmanager
def another_language() -> Iterator[None]:
    """Speak it while the block runs; what was said before stays in English.

    A program speaks one language from its start, so it keeps the kinds and sets that it has read:
    none that was read before comes in here, none that was read in here is left to who comes next.
    """
    _forget_what_was_read()
    speak(lambda text: f"«{text}»")
    try:
        yield
    finally:
        speak(lambda text: text)
        _forget_what_was_read()


def _forget_what_was_read() -> None:
    read_kind.cache_clear()
    stored_sets.part_sets.cache_clear()
