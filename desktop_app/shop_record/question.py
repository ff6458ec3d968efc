"""A question about an odd entry: as it is asked, and as it is kept once it has been answered."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from desktop_app.language import as_written


class Question(str):
    """The question in the language spoken; its answer is found again by `kept`, in any language."""

    kept: str


def question_of(ask: Callable[[], str | None]) -> Question | None:
    """Return what is asked, with the words under which its answer is kept; None where nothing is.

    `ask` puts the question together, without reading anything.
    """
    asked = ask()
    return questions_of((asked,), lambda: (ask() or asked,))[0] if asked else None


def questions_of(
    asked: Sequence[str], as_kept: Callable[[], Sequence[str]]
) -> tuple[Question, ...]:
    """Return what is asked, each with the words under which its answer is kept.

    `as_kept` puts the same questions together, in the same order; texts are as they are written.
    """
    if not asked:
        return ()
    questions = tuple(map(Question, asked))
    with as_written():
        for question, kept in zip(questions, as_kept(), strict=True):
            question.kept = kept
    return questions


def kept_words(question: str) -> str:
    """Return the words under which the answer to a question is kept."""
    return question.kept if isinstance(question, Question) else question
