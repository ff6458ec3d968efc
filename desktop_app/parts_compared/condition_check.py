"""What the noted conditions of both parts say: wear on the old one, damage on the new one."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from difflib import get_close_matches

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import ConditionSeen

#: Words that no new part deserves, whatever its kind, and what they grow into (common practice,
#: no source). A word that only begins alike ("pitch", "burnished") is none of them.
_DAMAGE = (
    "bent", "blister(ed|s)?", "brok(e|en)", "burn(s|t|ed)?", "chip(s|ped)?", "corro(ded|sion)",
    "crack(s|ed)?", "crush(ed)?", "dent(s|ed)?", "leak(s|ing|ed)?", "melt(ed)?", "missing",
    "pit(s|ted|ting)?", "rust(y|ed|s)?", "scor(e|es|ed|ing)", "seiz(e|es|ed)", "stripped",
    "swollen", "torn", "track(s|ed|ing)?", "warp(ed)?", "wet", "worn",
)  # fmt: skip
_DAMAGED = re.compile(rf"\b({'|'.join(_DAMAGE)})\b")
#: Words that turn it around, or leave it to a person, wherever they stand in the term.
_DENIED = re.compile(r"\b(no|not|never|none|free|without|tested|checked|ok|passed)\b")


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
        notes.append(
            tr(
                "The old part shows {term}{means}.{meant}",
                term=kind.term_words(term),
                means=means,
                meant=_meant(kind, term),
            )
        )
    for term in _terms(seen, "replacement"):
        known, said = kind.condition(term), kind.term_words(term)
        if known is not None and known.allowed_when_new:
            notes.append(tr("The new part shows {term}, which a new one may.", term=said))
        elif known is not None or _is_damage(term):
            against.append(
                tr("The new part shows {term}. A new part must not have that.", term=said)
            )
        else:
            notes.append(
                tr(
                    "The new part is noted as '{term}'. Whether that matters, a person "
                    "says.{meant}",
                    term=term,
                    meant=_meant(kind, term),
                )
            )
    return ConditionSentences(tuple(against), tuple(notes))


def _meant(kind: PartKind, term: str) -> str:
    """Ask where a word is almost one that the kind knows."""
    known = [name for one in kind.conditions for name in (one.term, *one.also)]
    if kind.condition(term) is not None:
        return ""
    near = get_close_matches(term.casefold(), known, n=1, cutoff=0.8)
    return tr(" Is “{near}” meant?", near=kind.term_words(near[0])) if near else ""


def _terms(seen: Sequence[ConditionSeen], side: str) -> list[str]:
    terms = {" ".join(term.split()) for one in seen if one.side == side for term in one.terms}
    return sorted(term for term in terms if term)


def _is_damage(term: str) -> bool:
    plain = term.casefold().replace("-", " ")
    return _DENIED.search(plain) is None and _DAMAGED.search(plain) is not None
