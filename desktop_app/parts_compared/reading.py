"""What a person saw and measured on the two parts of a pair."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.language import marked
from desktop_app.parts_compared.photo_doubt import PhotoDoubt

Side: TypeAlias = Literal["removed", "replacement"]
SIDES: tuple[Side, ...] = (marked("removed"), marked("replacement"))


@dataclass(frozen=True, slots=True)
class Reading:
    """Values of one dimension on one side, in the dimension's unit (or words).

    `instrument` None is the one the kind suggests. `photo` holds the doubt of each value where
    they were taken from marks on photos; the usual figures of "photo" don't count then.
    """

    side: Side
    dimension: str
    values: tuple[float | str, ...]
    instrument: str | None = None
    photo: tuple[PhotoDoubt, ...] | None = None


@dataclass(frozen=True, slots=True)
class ConditionSeen:
    """Terms for the state of one part."""

    side: Side
    terms: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Explanation:
    """Why a difference is in order, and who says so (a supersession letter, for example)."""

    dimension: str
    by: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class MakerLimit:
    """The vehicle or part maker's limits for one dimension, in its unit; None is an open end."""

    dimension: str
    at_least: float | None
    at_most: float | None
    source: str = ""
