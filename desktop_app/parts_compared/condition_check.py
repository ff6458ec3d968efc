"""What the noted conditions of both parts say: wear on the old one, damage on the new one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import ConditionSeen

#: Beginnings of words that no new part deserves, whatever its kind (common practice, no source).
_DAMAGE = (
    "bent", "blister", "brok", "burn", "chip", "corro", "crack", "crush", "cut", "dent",
    "leak", "melt", "miss", "pit", "rust", "scor", "seiz", "split", "stripp", "swollen", "torn",
    "track", "warp", "wet", "worn",
)  # fmt: skip
_DENIED = ("no ", "not ", "without ", "none")


@dataclass(frozen=True, slots=True)
class ConditionSentences:
    """Sentences against the replacement, and sentences that explain or ask."""

    against: tuple[str, ...]
    notes: tuple[str, ...]


def check_conditions(kind: PartKind, seen: Sequence[ConditionSeen]) -> ConditionSentences:
    """Weigh the terms of both sides; only those of the replacement can speak against it."""
    against: list[str] = []
    notes: list[str] = []
    for term in _terms(seen, "removed"):
        known = kind.condition(term)
        means = f": {known.means}" if known and known.means else ""
        notes.append(f"The old part shows {term}{means}.")
    for term in _terms(seen, "replacement"):
        known = kind.condition(term)
        if known is not None and known.allowed_when_new:
            notes.append(f"The new part shows {term}, which a new one may.")
        elif known is not None or _is_damage(term):
            against.append(f"The new part shows {term}. A new part must not have that.")
        else:
            notes.append(f"The new part is noted as '{term}'. Whether that matters, a person says.")
    return ConditionSentences(tuple(against), tuple(notes))


def _terms(seen: Sequence[ConditionSeen], side: str) -> list[str]:
    terms = {" ".join(term.split()) for one in seen if one.side == side for term in one.terms}
    return sorted(term for term in terms if term)


def _is_damage(term: str) -> bool:
    plain = term.casefold()
    if plain.startswith(_DENIED):
        return False
    return any(word.startswith(_DAMAGE) for word in plain.replace("-", " ").split())
