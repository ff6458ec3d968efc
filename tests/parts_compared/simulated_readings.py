"""Readings drawn at random, of parts whose true sizes are known, in four kinds of error."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal, TypeAlias

import numpy as np
from numpy.typing import NDArray

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.uncertainty import (
    Estimate,
    difference_estimate,
    side_estimate,
    side_reading,
)

ErrorKind: TypeAlias = Literal["normal", "rectangular", "rounded", "only rounded"]
ERROR_KINDS: tuple[ErrorKind, ...] = ("normal", "rectangular", "rounded", "only rounded")

#: No steps: what is read is what is there, plus scatter and the instrument's own error.
SMOOTH = Instrument("smooth", "mm", 0.0, 0.03, repeatability=0.02)
STEPPED = Instrument("stepped", "mm", 0.02, 0.03, repeatability=0.01)
#: Scatter and nothing else.
TRUE = Instrument("true", "mm", 0.0, 0.0, repeatability=0.02)


@dataclass(frozen=True, slots=True)
class Story:
    """What is drawn: kind of error, readings on a side, one instrument or two, seed, how often.

    `known_to` is the number of degrees of freedom with which a side's usual spread is known
    (None: it is the true one).
    """

    kind: ErrorKind
    count: int
    tool: Instrument
    instruments: int = 1
    seed: int = 1
    times: int = 4000
    known_to: float | None = None


@dataclass(frozen=True, slots=True)
class Drawn:
    """Values read on both sides (cases x readings) and the true sizes (cases), in mm."""

    removed: NDArray[np.float64]
    replacement: NDArray[np.float64]
    removed_size: NDArray[np.float64]
    difference: NDArray[np.float64]


def drawn(story: Story) -> Drawn:
    """Draw the readings; sizes and differences fall anywhere between two steps."""
    chance = np.random.default_rng(story.seed)
    size = chance.uniform(10.0, 10.1, story.times)
    difference = chance.uniform(0.0, 0.1, story.times)
    limit = story.tool.max_error
    own = chance.uniform(-limit, limit, (2, story.times))
    if story.instruments == 1:
        own[1] = own[0]
    sides = []
    for error, true in zip(own, (size, size + difference), strict=True):
        values = (true + error)[:, np.newaxis] + _scatter(story, chance)
        step = story.tool.resolution
        sides.append(np.round(values / step) * step if step else values)
    return Drawn(sides[0], sides[1], size, difference)


def _scatter(story: Story, chance: np.random.Generator) -> NDArray[np.float64]:
    shape = (story.times, story.count)
    if story.kind == "only rounded":
        return np.zeros(shape)
    spread = np.full(story.times, story.tool.usual_spread)
    if story.known_to is not None:
        spread /= np.sqrt(chance.chisquare(story.known_to, story.times) / story.known_to)
    if story.kind == "rectangular":
        unit = chance.uniform(-np.sqrt(3), np.sqrt(3), shape)
    else:
        unit = chance.standard_normal(shape)
    return unit * spread[:, np.newaxis]


@lru_cache(maxsize=64)
def errors_of_difference(story: Story) -> tuple[Estimate, ...]:
    """Return what the rules make of each case's difference, less the true difference."""
    seen, other = drawn(story), story.tool
    if story.instruments == 2:
        other = replace(other, name="another")
    return tuple(
        _less(difference_estimate(side_reading(old, story.tool), side_reading(new, other)), true)
        for old, new, true in zip(
            seen.removed.tolist(),
            seen.replacement.tolist(),
            seen.difference.tolist(),
            strict=True,
        )
    )


def errors_of_size(story: Story) -> tuple[Estimate, ...]:
    """Return what the rules make of each removed part's size, less the true size."""
    seen = drawn(story)
    return tuple(
        _less(side_estimate(side_reading(old, story.tool)), true)
        for old, true in zip(seen.removed.tolist(), seen.removed_size.tolist(), strict=True)
    )


def _less(estimate: Estimate, true: float) -> Estimate:
    return replace(estimate, value=estimate.value - true)
