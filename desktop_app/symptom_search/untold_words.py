"""The words of a question that mean nothing yet: what a shop may say the meaning of."""

from __future__ import annotations

import re
from typing import NamedTuple

from desktop_app.symptom_search.little_words import LITTLE_WORDS
from desktop_app.symptom_search.question import PERHAPS, Question
from desktop_app.symptom_search.word_forms import Token, tokens

_CLAUSE_ENDS = re.compile(r"[.;:!?,\n()]")


class Untold(NamedTuple):
    """A stretch of a question that was read as free words alone, empty where there is none.

    `perhaps` is the id of the symptom that is guessed, empty where none is.
    """

    words: str
    perhaps: str


def untold(question: Question) -> Untold:
    """Return the longest stretch of free words that nothing understood breaks.

    Little words may stand within it ("bucks like a mule").
    """
    free = {piece.id for piece in question.pieces if piece.kind == "word"}
    text = question.text
    best: list[Token] = []
    run: list[Token] = []
    for token in tokens(text):
        ended = bool(run) and _CLAUSE_ENDS.search(text[run[-1].end : token.start]) is not None
        if ended or (token.word not in free and token.word not in LITTLE_WORDS):
            run = []
        if token.word in free or (run and token.word in LITTLE_WORDS):
            run.append(token)
        if _told(run, free) > _told(best, free):
            best = list(run)
    perhaps = next((piece.id for piece in question.pieces if piece.kind == PERHAPS), "")
    return Untold(text[best[0].start : best[-1].end] if best else "", perhaps)


def _told(run: list[Token], free: set[str]) -> int:
    return sum(token.word in free for token in run)
