"""A question about an odd entry: as it is asked, and as it is kept once it has been answered."""

from __future__ import annotations

from collections.abc import Callable

from desktop_app.language import as_written


class Question(str):
    """The question in the language spoken; its answer is found again by `kept`, in any language."""

    kept: str


def question_of(ask: Callable[[], str | None]) -> Question | None:
    """Return what is asked, with the words under which its answer is kept; None where nothing is.

    `ask` puts the question together, without reading anything.
    """
    asked = ask()
    if not asked:
        return None
    question = Question(asked)
    with as_written():
        question.kept = ask() or asked
    return question


def kept_words(question: str) -> str:
    """Return the words under which the answer to a question is kept."""
    return question.kept if isinstance(question, Question) else question
