"""A part kind: what may be measured and looked at on such a part."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Literal, NamedTuple, Protocol, TypeAlias

from desktop_app.language import as_shown, marked, tr

Role: TypeAlias = Literal["same", "restored", "count", "orientation", "word", "limit"]
Direction: TypeAlias = Literal["bigger", "smaller"]
#: [low, high]; an end that is None is open.
Span: TypeAlias = tuple[float | None, float | None]

ROLES: tuple[Role, ...] = ("same", "restored", "count", "orientation", "word", "limit")
DIRECTIONS: tuple[Direction, ...] = (marked("bigger"), marked("smaller"))
COMMON_PRACTICE = marked("common practice, no source")  # written into kinds
_MOVES_NOTHING: Mapping[str, Direction] = {}  # nobody writes into it


class Dimension(NamedTuple):
    """One thing to measure, count or look at.

    `allowed` is a span of the difference replacement minus removed, in `unit`; for the role
    `limit` it is a span of the replacement's own value, and None until someone enters it.
    `choices` are kept as they stand here. `written` is the label in the program's own words, where
    `label` is in another language.
    """

    name: str
    label: str
    unit: str
    role: Role
    allowed: Span | None
    direction: Direction | None
    instrument: str
    essential: bool
    basis: str
    how: str = ""
    wear: str = ""
    choices: tuple[str, ...] = ()
    typical: Span | None = None
    written: str = ""

    @property
    def plain(self) -> str:
        """Return the label in the program's own words, whatever language is spoken."""
        return self.written or self.label

    def word_said(self, word: str) -> str:
        """Return a word that was read as people see it; what is no choice was typed by them."""
        return as_shown(word, self.choices)

    def word_kept(self, said: str) -> str:
        """Return the choice that is shown in these words, else what was typed."""
        words = {tr(one): one for one in self.choices}
        return words.get(said.strip(), said)


class ConditionTerm(NamedTuple):
    """A trade term for the state of a part, and the dimensions that go with it."""

    term: str
    also: tuple[str, ...] = ()
    means: str = ""
    moves: Mapping[str, Direction] = _MOVES_NOTHING
    allowed_when_new: bool = False


class TypicalWrong(NamedTuple):
    """How a wrong part of this kind usually gives itself away."""

    say: str
    shows_on: tuple[str, ...] = ()


class RefitCheck(NamedTuple):
    """What is easily got wrong when the part goes back on; `hurt` where it can injure."""

    say: str
    hurt: bool = False


class ProofCheck(NamedTuple):
    """What proves the repair afterwards, and where (bay, road, same-conditions ...)."""

    say: str
    level: str = "bay"


class Called(Protocol):
    """What a kind is called: all that a search needs of it."""

    @property
    def id(self) -> str:
        """The id that is kept."""

    @property
    def name(self) -> str:
        """The name in the language spoken."""

    @property
    def plain_names(self) -> tuple[str, ...]:
        """The names in the program's own words, whatever language is spoken."""

    @property
    def every_name(self) -> tuple[str, ...]:
        """Every name by which people may call it."""


class KindNames(NamedTuple):
    """The names of a kind; `written` are those in the program's words, where others are said."""

    id: str
    name: str
    also: tuple[str, ...] = ()
    written: tuple[str, ...] = ()

    @property
    def plain_names(self) -> tuple[str, ...]:
        """Return the names in the program's own words, whatever language is spoken."""
        return self.written or (self.name, *self.also)

    @property
    def every_name(self) -> tuple[str, ...]:
        """Return every name by which people may call it."""
        return (self.name, *self.also, *self.written)


class PartKind(NamedTuple):
    """Everything the shop knows about comparing one kind of part.

    `like` is the id of the built-in kind that a shop's own kind was copied from. Sides, views, the
    terms of conditions and the checks are kept as they stand here, and shown by tr(). `written` is
    as in KindNames.
    """

    id: str
    name: str
    also: tuple[str, ...]
    system: str
    sides: tuple[str, ...]
    pieces: str
    views: tuple[str, ...]
    cautions: tuple[str, ...]
    dimensions: tuple[Dimension, ...]
    conditions: tuple[ConditionTerm, ...]
    wrongs: tuple[TypicalWrong, ...]
    refit: tuple[RefitCheck, ...]
    proof: tuple[ProofCheck, ...]
    like: str = ""
    written: tuple[str, ...] = ()

    @property
    def sort(self) -> str:
        """Return the id that sets, sums and the spark path know such a part by."""
        return self.like or self.id

    @property
    def plain_names(self) -> tuple[str, ...]:
        """Return the names in the program's own words, whatever language is spoken."""
        return self.names.plain_names

    @property
    def every_name(self) -> tuple[str, ...]:
        """Return every name by which people may call it."""
        return self.names.every_name

    @property
    def names(self) -> KindNames:
        """Return what it is called, and nothing else of it."""
        return KindNames(self.id, self.name, self.also, self.written)

    def term_words(self, term: str) -> str:
        """Return a term as people see it; one that the kind doesn't know was typed by them."""
        return tr(term) if any(term == one.term for one in self.conditions) else term

    def place_said(self, place: str) -> str:
        """Return a position as people see it; what is none of the sides was typed by them."""
        return _each_word(place, {one: tr(one) for one in self.sides})

    def place_kept(self, said: str) -> str:
        """Return the sides that are shown in these words, else what was typed."""
        return _each_word(said, {tr(one): one for one in self.sides})

    def dimension(self, name: str) -> Dimension | None:
        """Return the dimension of that name, or None."""
        return next((one for one in self.dimensions if one.name == name), None)

    def condition(self, term: str) -> ConditionTerm | None:
        """Return the condition that goes by this term or one of its other names, or None."""
        wanted = " ".join(term.casefold().split())
        for condition in self.conditions:
            if wanted in (name.casefold() for name in (condition.term, *condition.also)):
                return condition
        return None


def _each_word(text: str, words: Mapping[str, str]) -> str:
    """Return a text of nothing but these words in their other form; any other text as it is."""
    longest_first = sorted(filter(None, words), key=len, reverse=True)
    one = rf"(?<!\S)(?:{'|'.join(map(re.escape, longest_first))})(?!\S)"
    if not longest_first or not re.fullmatch(rf"{one}(?:\s+{one})*", text.strip()):
        return text
    return re.sub(one, lambda found: words[found[0]], text)
