"""The language in which the program speaks: English as it is written here, or another one.

A text is written in English where it belongs and goes through tr(). What another language says
for it lies in resources/spoken (made with Qt's own tools); who starts the program says which one
is to be spoken, before anything else is imported, so that words kept in tables are spoken too.
What people typed, and what the record keeps, is never translated.

Figures in a text have the decimal sign said with speak_figures() (figures_shown.py).
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from contextlib import contextmanager
from typing import TypeVar

from desktop_app import figures_shown

#: Which language is wanted, said from outside.
VARIABLE = "BENCHWITNESS_LANGUAGE"
Term = TypeVar("Term", bound=str)
_Said = Callable[[str], str]


def _in_english(text: str) -> str:
    return text


_said: _Said = _in_english
_code = ""


def speak(said: _Said, code: str = "") -> None:
    """Let said() give the words of the language spoken from now on, "" where it has none.

    `code` is what the language is called, such as "es", so that other processes speak it too.
    """
    global _said, _code
    _said, _code = said, code


def code_spoken() -> str:
    """Return the code of the language spoken; "" where the texts are said as they are written."""
    return _code


def tr(text: str, /, **values: object) -> str:
    """Return the text in the language spoken, with the values put where it names them.

    A text without values is taken as it stands, braces and all.
    """
    said = text if figures_shown.in_kept_form.get() else _said(text) or text
    return figures_shown.filled(said, values) if values else said


@contextmanager
def as_written() -> Iterator[None]:
    """Within it texts are given as they are written here: to be kept, and found by their words."""
    before = figures_shown.in_kept_form.set(True)
    try:
        yield
    finally:
        figures_shown.in_kept_form.reset(before)


def marked(term: Term, /) -> Term:
    """Return a term as it is, marked for the translators: it is kept, and tr(term) is shown."""
    return term


def as_shown(kept: str, ours: Collection[str]) -> str:
    """Return kept words as they are shown: those of our own in the language spoken."""
    return tr(kept) if kept in ours else kept


def as_kept(typed: str, ours: Collection[str]) -> str:
    """Return typed words as they are kept: those that show words of our own as these."""
    bare = typed.strip()
    return next((one for one in ours if bare and bare == tr(one)), typed)
