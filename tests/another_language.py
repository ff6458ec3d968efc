"""A language in which each text is said in quotation marks, for what must not hang on any."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from desktop_app.language import speak


@contextmanager
def another_language() -> Iterator[None]:
    """Speak it while the block runs; what was said before stays in English."""
    speak(lambda text: f"«{text}»")
    try:
        yield
    finally:
        speak(lambda text: text)
