"""The words people use for faults: text in, symptom groups and conditions out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import NamedTuple

from desktop_app.language import tr
from desktop_app.symptom_search.perhaps import Guesser
from desktop_app.symptom_search.phrase_finder import Found, PhraseFinder
from desktop_app.symptom_search.subjects import NO_THINGS, Subjects, Things
from desktop_app.symptom_search.told_words import WordReader, stem

_NOTHING = ""
_NO_OTHERS: Mapping[str, str] = MappingProxyType({})
_SLACK = 3  # foreign words that may stand among those of a symptom's phrase


class Group(NamedTuple):
    """One symptom group: its id, its short plain name, and what goes with it.

    `heard` are customers' phrases, `shop` technicians'; `when` are condition ids, `systems`
    system ids, `codes` standard trouble codes (a hint, never a diagnosis), `near` group ids.
    `instead` gives by condition the group that one word alone means under it: knocks, on cobbles.
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
    instead: Mapping[str, str] = _NO_OTHERS

    def __hash__(self) -> int:
        return hash(self.id)

    @property
    def shown(self) -> str:
        """Its short plain name in the language spoken; `plain` is what customers' words match."""
        return tr(self.plain)

    @property
    def phrases(self) -> tuple[str, ...]:
        """Every phrase that stands for the group."""
        return (self.plain, *self.heard, *self.shop)


class TwoMeanings(NamedTuple):
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
        own: Mapping[str, str] | None = None,
        no_condition: Iterable[str] = (),
        things: Things = NO_THINGS,
    ) -> None:
        """Take groups, phrases by condition id, phrases for nothing at all, and words akin.

        `no_condition` are phrases that name no condition, `things` what may be told about.
        `akin` gives what may stand for a word within a phrase. `own` are a shop's phrases with the
        group of each: the shop's word holds where others have the phrase too; those of unknown
        groups are left out.
        """
        groups, nothing, two_meanings = tuple(groups), tuple(nothing), tuple(two_meanings)
        no_condition = tuple(no_condition)
        self._built_in = (groups, conditions, reader, two_meanings, nothing, akin)
        self._more = (no_condition, things)
        ids = {group.id for group in groups}
        own = {phrase: group for phrase, group in (own or {}).items() if group in ids}
        self.own = MappingProxyType(own)
        self.groups = tuple(_with_phrases(group, own) for group in groups)
        self._by_id = {group.id: group for group in self.groups}
        self._reader = reader
        self._two_meanings = two_meanings
        phrases = {_NOTHING: nothing} | {g.id: g.phrases for g in groups}
        systems = {group.id: group.systems for group in self.groups}
        subjects = Subjects(reader, things, systems, {g.id: g.phrases for g in self.groups})
        self._subjects, self._things = subjects, things
        self._group_finder = PhraseFinder(reader, phrases, akin, _SLACK, own, subjects)
        named = {_NOTHING: (*nothing, *no_condition)} | dict(conditions)
        symptoms = self._group_finder
        self._condition_finder = PhraseFinder(reader, named, conditions=True, symptoms=symptoms)
        self._guesser: Guesser | None = None

    def with_own(self, own: Mapping[str, str]) -> Vocabulary:
        """Return the built-in vocabulary with a shop's phrases and the id of what each means."""
        return Vocabulary(*self._built_in, own, *self._more)

    def compared(self, phrase: str) -> tuple[str, ...]:
        """Return the words of a phrase as they are compared; none where it has only little ones."""
        return self._reader.words(phrase)

    def is_word(self, word: str) -> bool:
        """Tell whether a word is known as it is written: no slip for another."""
        return self._reader.is_word(word) or self._reader.is_word(stem(word))

    def can_mean(self, phrase: str) -> bool:
        """Tell whether a phrase would be read where it is told, if it meant anything."""
        found = PhraseFinder(self._reader, {}, own={phrase: phrase}).find(phrase)
        return any(not one.denied for one in found)

    def names_another(self, word: str, before: str) -> bool:
        """Tell whether a word before another makes it another thing: an oil cap is no cap."""
        return before in self._things.which.get(word, ())

    def group(self, identity: str) -> Group | None:
        """Return the group with this id, or None."""
        return self._by_id.get(identity)

    def shown(self, identity: str) -> str:
        """Return the short name of a group as it is shown; an unknown id is shown as it is."""
        group = self._by_id.get(identity)
        return group.shown if group else identity

    def near(self, identity: str) -> tuple[Group, ...]:
        """Return the neighbours of a group: offered in a search, never merged in a count."""
        group = self._by_id.get(identity)
        return tuple(self._by_id[other] for other in group.near) if group else ()

    def groups_in(self, text: str) -> tuple[Group, ...]:
        """Return the symptom groups that the text speaks of, in the order of their mention."""
        found = _once(self._group_finder.find(text))
        if any(one.words == 1 and self._by_id[one.id].instead for one in found):
            found = self._under(self.conditions_in(text), found)
        return tuple(self._by_id[one.id] for one in found)

    def _under(self, conditions: Sequence[str], found: Iterable[Found]) -> tuple[Found, ...]:
        """Return what single words mean under these conditions, each symptom once."""
        meant: dict[str, Found] = {}
        for one in found:
            instead = self._by_id[one.id].instead if one.words == 1 else {}
            other = next((instead[id_] for id_ in conditions if id_ in instead), one.id)
            meant.setdefault(other, one._replace(id=other))
        return tuple(meant.values())

    def perhaps_in(self, text: str) -> Group | None:
        """Guess the group that is meant where no phrase was told; None where it is not clear.

        A guess is for searching alone, and is shown as one: nothing is counted as told by it.
        """
        if self._group_finder.find(text):
            return None  # told, or told and denied
        if self._guesser is None:
            phrases = {group.id: (*group.phrases, group.means) for group in self.groups}
            self._guesser = Guesser(
                self._reader, phrases, self._group_finder.meanings, self._things.parts
            )
        found = self._guesser.guess(text, self._subjects)
        return None if found is None else self._by_id[found]

    def conditions_in(self, text: str) -> tuple[str, ...]:
        """Return the ids of the conditions that the text names, in the order of their mention."""
        return tuple(self.conditions_said_in(text))

    def conditions_said_in(self, text: str) -> dict[str, tuple[str, ...]]:
        """Return the same with the compared words that tell each."""
        return {found.id: found.said for found in _once(self._condition_finder.find(text))}

    def to_ask(self, text: str) -> tuple[TwoMeanings, ...]:
        """Return the words in the text that mean two things and that nothing in it settles."""
        words = {word for clause in self._reader.clauses(text) for word in clause}
        return tuple(
            two
            for two in self._two_meanings
            if self._reader.word(two.word) in words
            and words.isdisjoint(self._reader.word(other) for other in two.settled_by)
        )


def _with_phrases(group: Group, own: Mapping[str, str]) -> Group:
    added = tuple(phrase for phrase, meant in own.items() if meant == group.id)
    return group._replace(heard=(*added, *group.heard)) if added else group


def _once(found: Iterable[Found]) -> tuple[Found, ...]:
    """Keep the first mention of each id that is not denied."""
    kept: dict[str, Found] = {}
    for one in found:
        if not one.denied and one.id != _NOTHING:
            kept.setdefault(one.id, one)
    return tuple(kept.values())
