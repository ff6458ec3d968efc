"""How far a long piece of work has come."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Step:
    """`done` of `of` pieces are behind us, and a word about what comes now."""

    done: int
    of: int
    words: str
