"""What people asked, with the symptom groups that they mean, and how much of it is understood."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from desktop_app.symptom_search.vocabulary import Vocabulary

FOLDER = Path(__file__).parent / "asked"


@dataclass(frozen=True, slots=True)
class Asked:
    """A sentence; `means` must be heard, `may` may be; only those to `tune` were tuned on."""

    text: str
    means: frozenset[str]
    may: frozenset[str]
    tune: bool


@dataclass(frozen=True, slots=True)
class Understood:
    """Shares, 0 to 1: of what is heard, what was meant; of what was meant, what is heard."""

    precision: float
    recall: float
    without_fault: float


def asked_sentences() -> list[Asked]:
    """Read all sentences, file by file."""
    return [
        Asked(
            one["text"],
            frozenset(one["means"]),
            frozenset(one.get("may", ())),
            one.get("tune", False),
        )
        for path in sorted(FOLDER.glob("*.toml"))
        for one in tomllib.loads(path.read_text(encoding="utf-8"))["asked"]
    ]


def understood(sentences: Iterable[Asked], vocabulary: Vocabulary) -> Understood:
    """Read all sentences and count."""
    right = wrong = missed = faultless = total = 0
    for one in sentences:
        heard = {group.id for group in vocabulary.groups_in(one.text)}
        right += len(heard & one.means)
        wrong += len(heard - one.means - one.may)
        missed += len(one.means - heard)
        faultless += one.means <= heard <= one.means | one.may
        total += 1
    return Understood(right / (right + wrong), right / (right + missed), faultless / total)
