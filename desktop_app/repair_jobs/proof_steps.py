"""The order in which nothing is lost: from saving what the car knows to reading it again cold."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from desktop_app.language import tr


@dataclass(frozen=True, slots=True)
class Step:
    """One step: the id that is kept, its words on a button, and what belongs to it."""

    id: str
    words: str
    means: str


STEPS = (
    Step(
        "saved",
        tr("Codes saved"),
        tr("Codes, freeze frame, the car's own tests, misfire counters and trims are saved."),
    ),
    Step("photographed", tr("Photographed"), tr("The parts are photographed as they were found.")),
    Step("repaired", tr("Repaired"), tr("The repair is done and closed up.")),
    Step("cleared", tr("Cleared once"), tr("The codes are cleared, once and not again.")),
    Step(
        "noted",
        tr("Clearing noted"),
        tr(
            "It is noted that they were cleared: that wipes the car's own tests, often "
            "learned trims."
        ),
    ),
    Step("driven", tr("Driven"), tr("The drive is done, under the conditions told of.")),
    Step(
        "pending-read",
        tr("Pending read"),
        tr("Pending codes are read before the engine stands long."),
    ),
    Step("cold-read", tr("Read again cold"), tr("Everything is read again after a cold start.")),
)
STEP_IDS = frozenset(step.id for step in STEPS)
_WORDS = {step.id: step.words for step in STEPS}
# Where the wrong way round loses something: of the rest the order is a matter of convenience.
_IN_ORDER = (
    ("saved", "cleared"),
    ("repaired", "cleared"),
    ("cleared", "driven"),
    ("driven", "pending-read"),
    ("driven", "cold-read"),
)


def step_question(done: Mapping[str, str], step: str) -> str | None:
    """Return what is asked before a step is ticked; nothing is ever refused.

    `done` maps each step that is ticked to its moment (ISO 8601).
    """
    if step == "cleared" and "saved" not in done:
        return tr(
            "Nothing is ticked as saved yet. Clearing wipes codes, freeze frame and "
            "the car's own tests, and nothing brings them back. Was it cleared all the "
            "same?"
        )
    if step in ("pending-read", "cold-read") and "driven" not in done:
        return tr(
            "No drive is ticked yet. Codes read before a drive say little. Were they "
            "read all the same?"
        )
    return None


def order_said(done: Mapping[str, str]) -> tuple[str, ...]:
    """Return what went out of order, to stay in view."""
    said = []
    if "cleared" in done and "saved" not in done:
        said.append(tr("Cleared, and not ticked as saved before."))
    for earlier, later in _IN_ORDER:
        if earlier in done and later in done and done[later] < done[earlier]:
            first, then = _WORDS[later], _WORDS[earlier]
            said.append(
                tr("By their times “{first}” was done before “{then}”.", first=first, then=then)
            )
    return tuple(said)
