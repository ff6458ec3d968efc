"""Of what something is told: "the battery dies" is told of the battery, not of the engine."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from itertools import chain
from typing import NamedTuple

from desktop_app.symptom_search.told_words import WordReader, stem

# What may stand between a thing and what it does: "the heater only blows".
_MAY_STAND_BETWEEN = "only not never wont doesnt always suddenly now out up usually"
_BETWEEN = frozenset(map(stem, _MAY_STAND_BETWEEN.split()))


class Things(NamedTuple):
    """Words for things, as they are written.

    `of_system` are things by the system they belong to ("apart" for none); `which` gives, of a
    word, those that before it make another thing; `parts` tell no fault when told alone.
    """

    of_system: Mapping[str, Collection[str]]
    which: Mapping[str, Collection[str]]
    parts: Collection[str] = ()


NO_THINGS = Things({}, {})


class Subjects:
    """Tells whether what was found is told of another thing than its symptom is about.

    `systems` and `phrases` are those of each symptom group. A word alone ("dies") is about what
    makes the car run; another thing right before it is its subject, unless the group's own phrases
    speak of that thing or its system is one of the group's.
    """

    def __init__(
        self,
        reader: WordReader,
        things: Things,
        systems: Mapping[str, Collection[str]],
        phrases: Mapping[str, Iterable[str]],
    ) -> None:
        self._system_of = {
            word: system
            for system, listed in things.of_system.items()
            for word in map(reader.word, listed)
        }
        self._which = {
            reader.word(word): frozenset(map(reader.word, before))
            for word, before in things.which.items()
        }
        self._systems = {group: frozenset(of) for group, of in systems.items()}
        self._known = frozenset(self._system_of).union(*self._which.values())
        self._reader, self._phrases = reader, phrases
        self._own: dict[str, frozenset[str]] = {}

    def is_of_another(
        self, group: str, clause: Sequence[str], places: Sequence[int], taken: Collection[int]
    ) -> bool:
        """Tell it of the words at some places; those at `taken` ones say something of their own."""
        own = self._things_of(group)
        for place in places:
            before = _subject_of(clause, place)
            if before >= 0 and before not in places:
                other = clause[before]
                if other in self._which.get(clause[place], ()) and other not in own:
                    return True
        if len(places) > 1 or not places[0]:
            return False
        subject = _subject_of(clause, places[0])
        system = self._system_of.get(clause[subject])
        if system is None or subject in taken or clause[subject] in own:
            return False
        return system not in self._systems.get(group, ())

    def _things_of(self, group: str) -> frozenset[str]:
        """Return the things that a group's own phrases speak of, worked out when first asked."""
        own = self._own.get(group)
        if own is None:
            told = map(self._reader.words, self._phrases.get(group, ()))
            own = self._own[group] = self._known.intersection(chain.from_iterable(told))
        return own


def _subject_of(clause: Sequence[str], place: int) -> int:
    """Return the place of what may be the subject of a word, -1 where nothing stands before it."""
    return place - 2 if place > 1 and clause[place - 1] in _BETWEEN else place - 1
