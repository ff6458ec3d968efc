"""A bench sum worked out: the figure, its doubt, what it came from and how far it goes."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.chance_words import RARE


@dataclass(frozen=True, slots=True)
class BenchSum:
    """One result; `value` and `expanded` (coverage 0.95) are in `unit`.

    `expanded` is None where no plus-or-minus fits; the sentence then says the doubt in words.
    `inputs` are (label, text) in the order in which they were asked.
    """

    name: str
    value: float
    unit: str
    expanded: float | None
    sentence: str
    limit_sentence: str
    inputs: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class SumKept:
    """A kept sum as it was said then: its sentence, its limit, and (label, text) of its inputs."""

    id: int
    sum: str
    name: str
    sentence: str
    limit: str
    inputs: tuple[tuple[str, str], ...]
    on_sheet: bool


def chance(probability: float) -> str:
    """Return a probability as said at the bench, like "p 0.51" or "p below 0.001"."""
    if probability < RARE:
        return tr("p below {rare:g}", rare=RARE)
    return f"p {figure(probability, '.2g')}"


def listed(numbers: tuple[int, ...]) -> str:
    """Return whole numbers as said: "1", "1 and 4", "1, 2 and 4"."""
    words = [str(one) for one in numbers]
    return (
        words[0]
        if len(words) == 1
        else tr("{first} and {last}", first=", ".join(words[:-1]), last=words[-1])
    )
