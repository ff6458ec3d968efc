"""The words people use for faults: text in, symptom groups and conditions out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from desktop_app.symptom_search.perhaps import Guesser
from desktop_app.symptom_search.phrase_finder import Found, PhraseFinder
from desktop_app.symptom_search.told_words import WordReader

_NOTHING = ""
_SLACK = 3  # foreign words that may stand among those of a symptom's phrase


@dataclass(frozen=True, slots=True)
class Group:
    """One symptom group: its id, its short plain name, and what goes with it.

    `heard` are customers' phrases, `shop` technicians'; `when` are condition ids, `systems`
    system ids, `codes` standard trouble codes (a hint, never a diagnosis), `near` group ids.
    """

    id: str
    plain: str
    means: str
    heard: tuple[str, ...]
    shop: tuple[str, ...] = ()
    when: tuple[str, ...] = ()
    systems: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    near: tuple[str, ...] = ()

    @property
    def phrases(self) -> tuple[str, ...]:
        """Every phrase that stands for the group."""
        return (self.plain, *self.heard, *self.shop)


@dataclass(frozen=True, slots=True)
class TwoMeanings:
    """A word that means two things: ask, never guess. `settled_by` are words that decide it."""

    word: str
    ask: str
    settled_by: tuple[str, ...] = ()


class Vocabulary:
    """All groups with their phrases, ready to read what somebody said.

    The longest phrase wins, each word counts once, and a symptom that is denied ("no misfire
    now", "doesn't stall") does not count.
    """

    def __init__(
        self,
        groups: Iterable[Group],
        conditions: Mapping[str, Iterable[str]],
        reader: WordReader,
        two_meanings: Iterable[TwoMeanings] = (),
        nothing: Iterable[str] = (),
        akin: Mapping[str, Iterable[str]] | None = None,
    ) -> None:
        """Take groups, phrases by condition id, phrases for nothing at all, and words akin.

        `akin` gives what may stand for a word within a phrase.
        """
        nothing = tuple(nothing)
        self.groups = tuple(groups)
        self._by_id = {group.id: group for group in self.groups}
        self._reader = reader
        self._two_meanings = tuple(two_meanings)
        self._group_finder = PhraseFinder(
            reader, {_NOTHING: nothing} | {g.id: g.phrases for g in self.groups}, akin, _SLACK
        )
        self._condition_finder = PhraseFinder(reader, {_NOTHING: nothing} | dict(conditions))
        self._guesser: Guesser | None = None

    def group(self, identity: str) -> Group | None:
        """Return the group with this id, or None."""
        return self._by_id.get(identity)

    def plain(self, identity: str) -> str:
        """Return the short name of a group; an unknown id is shown as it is."""
        group = self._by_id.get(identity)
        return group.plain if group else identity

    def near(self, identity: str) -> tuple[Group, ...]:
        """Return the neighbours of a group: offered in a search, never merged in a count."""
        group = self._by_id.get(identity)
        return tuple(self._by_id[other] for other in group.near) if group else ()

    def groups_in(self, text: str) -> tuple[Group, ...]:
        """Return the symptom groups that the text speaks of, in the order of their mention."""
        return tuple(self._by_id[found.id] for found in _once(self._group_finder.find(text)))

    def perhaps_in(self, text: str) -> Group | None:
        """Guess the group that is meant where no phrase was told; None where it is not clear.

        A guess is for searching alone, and is shown as one: nothing is counted as told by it.
        """
        if self._group_finder.find(text):
            return None  # told, or told and denied
        if self._guesser is None:
            phrases = {group.id: (*group.phrases, group.means) for group in self.groups}
            self._guesser = Guesser(self._reader, phrases, self._group_finder.meanings)
        found = self._guesser.guess(text)
        return None if found is None else self._by_id[found]

    def conditions_in(self, text: str) -> tuple[str, ...]:
        """Return the ids of the conditions that the text names, in the order of their mention."""
        return tuple(found.id for found in _once(self._condition_finder.find(text)))

    def to_ask(self, text: str) -> tuple[TwoMeanings, ...]:
        """Return the words in the text that mean two things and that nothing in it settles."""
        words = {word for clause in self._reader.clauses(text) for word in clause}
        return tuple(
            two
            for two in self._two_meanings
            if self._reader.word(two.word) in words
            and words.isdisjoint(self._reader.word(other) for other in two.settled_by)
        )


def _once(found: Iterable[Found]) -> tuple[Found, ...]:
    """Keep the first mention of each id that is not denied."""
    kept: dict[str, Found] = {}
    for one in found:
        if not one.denied and one.id != _NOTHING:
            kept.setdefault(one.id, one)
    return tuple(kept.values())
