"""The question: what somebody typed, read into symptoms, conditions, codes, names and words."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from typing import NamedTuple

from desktop_app.language import marked, tr
from desktop_app.parts_compared.part_kinds.part_kind import Called
from desktop_app.repair_jobs.concern_conditions import condition_as_written, condition_words
from desktop_app.repair_jobs.trouble_code import codes_in
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.symptom_search.little_words import LITTLE_WORDS
from desktop_app.symptom_search.vocabulary import Group, Vocabulary
from desktop_app.symptom_search.word_forms import Token, alike, is_named, tokens

MOST_CHARACTERS = 300
MOST_WORDS = 12
SHORTEST_BEGINNING = 3  # with fewer letters half of all jobs would match
PERHAPS = marked("perhaps")  # the kind of a piece that is guessed
# The other kinds of pieces, as they stand before what was read.
_SAID_BEFORE = (
    *(marked("symptom"), marked("code"), marked("condition"), marked("part"), marked("job")),
    *(marked("plate"), marked("tag"), "VIN", marked("VIN ends in"), marked("only")),
)
_NEAR = 4  # words on either side of one that may belong to its phrase
_ALIKE = 3  # letters that two forms of a word share at least
_NAME = 17  # characters of the longest name of a vehicle, its VIN
_DAY = re.compile(r"\b(?:\d{4}[-./]\d\d?[-./]\d\d?|\d\d?[-./]\d\d?[-./]\d{4})\b")
_CODE_APART = re.compile(r"\b([PCBU])[ -]([0-3][0-9A-F]{3})\b", re.IGNORECASE)

# “No” and “not” are looked at before they are left out.
_DENIALS = frozenset(
    ("no", "not", "never", "without", "doesnt", "dont", "didnt", "isnt", "arent", "wasnt", "wont")
)


class Piece(NamedTuple):
    """One thing that was read in the text, as it is shown: its kind, its id and its words.

    `written` are the words as they are written here, where `shown` may be in another language.
    """

    kind: str
    id: str
    shown: str
    written: str = ""

    def in_words(self) -> str:
        """Return it as it stands in a line: what is guessed says so."""
        return f"{tr(PERHAPS)} {self.shown}" if self.kind == PERHAPS else self.shown

    def as_written(self) -> str:
        """Return the same as it is handed on to other programs, whatever is spoken here."""
        words = self.written or self.shown
        return f"{PERHAPS} {words}" if self.kind == PERHAPS else words


class Word(NamedTuple):
    """A word to find in texts, and its place in the question.

    `unfinished` while it is still being typed; `understood` where it belongs to a symptom or a
    condition that was read, `known` where the vocabulary knows it: then it is no slip for another.
    """

    word: str
    unfinished: bool = False
    place: int = 0
    understood: bool = False
    known: bool = False


class Name(NamedTuple):
    """What may be a plate, a VIN or its end, or a job's number: capitals, and its places."""

    written: str
    compact: str
    places: tuple[int, ...]


class Question(NamedTuple):
    """A text as it was read. `names` are only guesses until the record knows one of them.

    `perhaps` is the symptom that is guessed where none was told.
    """

    text: str
    groups: tuple[Group, ...] = ()
    perhaps: Group | None = None
    conditions: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    part_kinds: tuple[str, ...] = ()
    words: tuple[Word, ...] = ()
    names: tuple[Name, ...] = ()
    pieces: tuple[Piece, ...] = ()


def read_question(text: str, vocabulary: Vocabulary, kinds: Mapping[str, Called]) -> Question:
    """Read a text; whatever is typed can be read, at worst into nothing."""
    text = text[:MOST_CHARACTERS].replace("\x00", " ").lstrip()
    said = tokens(text)[: MOST_WORDS * 2]
    groups = vocabulary.groups_in(text)
    conditions = vocabulary.conditions_in(text)
    codes = codes_told(text)
    parts, part_places = _part_kinds_in(said, kinds, vocabulary)
    words = tuple(
        word._replace(understood=word.understood or _is_read(word.word, groups, vocabulary))
        for word in _free_words(text, said, codes, vocabulary)
        if not _goes_along(text, said, word, groups, vocabulary)
    )
    perhaps = vocabulary.perhaps_in(text) if not groups else None
    pieces = [Piece("symptom", group.id, group.shown, group.plain) for group in groups]
    if perhaps is not None:
        pieces.append(Piece(PERHAPS, perhaps.id, perhaps.shown, perhaps.plain))
    pieces += [Piece("code", code, code) for code in codes]
    pieces += [
        Piece("condition", one, condition_words(one), condition_as_written(one))
        for one in conditions
    ]
    pieces += [Piece("part", kind, kinds[kind].name, kinds[kind].plain_names[0]) for kind in parts]
    used = {said[place].word for place in part_places}
    for word in words:
        if word.word not in used and not word.understood:
            pieces.append(Piece("word", word.word, word.word))
    names = tuple(_names_in(text, said, codes))
    return Question(text, groups, perhaps, conditions, codes, parts, words, names, tuple(pieces))


def codes_told(text: str) -> tuple[str, ...]:
    """Return the trouble codes in a text, those too whose letter stands apart ("p 0303")."""
    return codes_in(_CODE_APART.sub(r"\1\2", text))


def without(text: str, piece: Piece, vocabulary: Vocabulary, kinds: Mapping[str, Called]) -> str:
    """Return the text without the fewest words that make it say this piece, however often."""
    while span := _shortest_saying(text, piece, vocabulary, kinds):
        text = f"{text[: span[0]].rstrip()} {text[span[1] :].lstrip()}".strip()
    return text


def _shortest_saying(
    text: str, piece: Piece, vocabulary: Vocabulary, kinds: Mapping[str, Called]
) -> tuple[int, int] | None:
    said = tokens(text)[: MOST_WORDS * 2]
    for length in range(1, 8):
        for first in range(len(said) - length + 1):
            span = (said[first].start, said[first + length - 1].end)
            if _says(text[span[0] : span[1]], piece, vocabulary, kinds):
                return span
    return None


def _says(stretch: str, piece: Piece, vocabulary: Vocabulary, kinds: Mapping[str, Called]) -> bool:
    if piece.kind == "symptom":
        return any(group.id == piece.id for group in vocabulary.groups_in(stretch))
    if piece.kind == PERHAPS:
        guess = vocabulary.perhaps_in(stretch)
        return guess is not None and guess.id == piece.id
    if piece.kind == "condition":
        return piece.id in vocabulary.conditions_in(stretch)
    if piece.kind == "code":
        return piece.id in codes_told(stretch)
    if piece.kind == "part":
        return piece.id in _part_kinds_in(tokens(stretch), kinds, vocabulary)[0]
    if piece.kind == "word":
        return any(token.word == piece.id for token in tokens(stretch))
    return matching_plate(stretch) == matching_plate(piece.id)


def _part_kinds_in(
    said: list[Token], kinds: Mapping[str, Called], vocabulary: Vocabulary
) -> tuple[tuple[str, ...], set[int]]:
    """Return the part kinds named, the longest names first, and the places they take."""
    named = _part_names(tuple((kind.id, *kind.every_name) for kind in kinds.values()))
    longest = max((length for length, _ in named), default=0)
    found: dict[str, None] = {}
    taken: set[int] = set()
    for length in range(min(longest, len(said)), 0, -1):
        for first in range(len(said) - length + 1):
            places = range(first, first + length)
            if not taken.isdisjoint(places):
                continue
            spoken = [said[place].word for place in places]
            before = said[first - 1].word if first else ""
            if length == 1 and vocabulary.names_another(spoken[0], before):
                continue
            shelf = named.get((length, spoken[0][:_ALIKE]), ())
            fits = [kind for names, kind in shelf if all(map(is_named, names, spoken))]
            if fits:
                taken.update(places)
                found.update(dict.fromkeys(fits))
    return tuple(found), taken


@lru_cache(maxsize=8)
def _part_names(
    kinds: tuple[tuple[str, ...], ...],
) -> dict[tuple[int, str], list[tuple[list[str], str]]]:
    """Return names (id, name, other names of each kind) by their length and first letters."""
    shelves: dict[tuple[int, str], list[tuple[list[str], str]]] = {}
    for kind, *written in kinds:
        for words in written:
            if names := [token.word for token in tokens(words)]:
                shelves.setdefault((len(names), names[0][:_ALIKE]), []).append((names, kind))
    return shelves


def _free_words(
    text: str, said: list[Token], codes: Iterable[str], vocabulary: Vocabulary
) -> tuple[Word, ...]:
    coded = {code.casefold() for code in codes}
    apart = _places_of_codes(text, said)
    denied = _denied_places(text, said, vocabulary)
    words: dict[str, Word] = {}
    for place, token in enumerate(said):
        being_typed = token is said[-1] and token.end == len(text)
        unfinished = being_typed and len(token.word) >= SHORTEST_BEGINNING
        filling = token.word in LITTLE_WORDS and not (unfinished and len(said) == 1)
        if filling or place in denied or place in apart or len(token.word) < 2:
            continue
        if token.word.replace("o", "0") in coded or token.word in coded:
            continue
        told = _tells_condition(text, said, place, vocabulary)
        unfinished = unfinished and not told  # "give it gas" is said: nobody wants a gasket
        known = not unfinished and vocabulary.is_word(token.word)
        words[token.word] = Word(token.word, unfinished, place, understood=told, known=known)
    return tuple(words.values())[:MOST_WORDS]


def _tells_condition(text: str, said: list[Token], place: int, vocabulary: Vocabulary) -> bool:
    """Tell whether a word belongs to a phrase that tells a condition: without it none is told.

    Only the words near it are looked at: the same condition may be told again further on.
    """
    told = vocabulary.conditions_in(text)
    if not told:
        return False
    near = _near(said, place)
    start, end = near[0].start, near[-1].end
    here = set(told).intersection(vocabulary.conditions_in(text[start:end]))
    rest, at = "", start
    for token in (one for one in near if one.word == said[place].word):
        rest, at = rest + text[at : token.start], token.end
    return not here <= set(vocabulary.conditions_in(rest + text[at:end]))


def _goes_along(
    text: str, said: list[Token], word: Word, groups: Iterable[Group], vocabulary: Vocabulary
) -> bool:
    """Tell whether a word goes along with one that tells a condition: "air" in "the air is wet".

    Whoever looked for it would find air filters.
    """
    if _is_read(word.word, groups, vocabulary):
        return False
    near = _near(said, word.place)
    told = vocabulary.conditions_said_in(text[near[0].start : near[-1].end])
    compared = set(vocabulary.compared(word.word))
    return any(
        compared
        and compared.issubset(words)
        and any(_names_condition(one, vocabulary) for one in words)
        for words in told.values()
    )


def _near(said: list[Token], place: int) -> list[Token]:
    """Return the words around one that may belong to its phrase, and itself."""
    return said[max(0, place - _NEAR) : place + _NEAR + 1]


def _places_of_codes(text: str, said: list[Token]) -> set[int]:
    """Return the places of both halves of codes whose letter stands apart."""
    spans = [match.span() for match in _CODE_APART.finditer(text)]
    return {i for i, one in enumerate(said) for a, b in spans if a <= one.start < b}


def _denied_places(text: str, said: list[Token], vocabulary: Vocabulary) -> set[int]:
    """Return the places of words that are denied ("no misfire"), unless that is the symptom."""
    places: set[int] = set()
    for place, token in enumerate(said[:-1]):
        if token.word in _DENIALS:
            stretch = text[token.start : said[min(place + 2, len(said) - 1)].end]
            if not vocabulary.groups_in(stretch):
                places.add(place + 1)
    return places


def _is_read(word: str, groups: Iterable[Group], vocabulary: Vocabulary) -> bool:
    """Tell whether a word is already shown, as part of a symptom or of a condition."""
    if any(alike(word, other) for g in groups for other in _words_of(g).get(word[:_ALIKE], ())):
        return True
    return _names_condition(word, vocabulary)


@lru_cache(maxsize=4096)
def _names_condition(word: str, vocabulary: Vocabulary) -> bool:
    return bool(vocabulary.conditions_in(word))


@cache
def _words_of(group: Group) -> dict[str, frozenset[str]]:
    """Return the words of a group's phrases by their first letters."""
    words = {token.word for phrase in group.phrases for token in tokens(phrase)}
    starts = {word[:_ALIKE] for word in words}
    return {start: frozenset(w for w in words if w.startswith(start)) for start in starts}


def _names_in(text: str, said: list[Token], codes: Iterable[str]) -> Iterable[Name]:
    """Yield what may name a vehicle or a job: up to four neighbouring words with a digit."""
    known = set(codes)
    apart = _places_of_codes(text, said)
    days = [day.span() for day in _DAY.finditer(text)]
    seen: set[str] = set()
    for first in range(len(said)):
        for last in range(first, min(first + 4, len(said))):
            written = text[said[first].start : said[last].end]
            compact = matching_plate(written)
            if len(compact) > _NAME or compact in seen or compact in known:
                continue
            if apart.issuperset(range(first, last + 1)):
                continue
            if _is_part_of_a_day(said[first].start, said[last].end, days):
                continue
            if (len(compact) >= 2 or len(said) == 1) and re.search(r"\d", compact):
                seen.add(compact)
                yield Name(written.upper(), compact, tuple(range(first, last + 1)))
            elif len(compact) >= 3 and first == 0 and last == len(said) - 1:
                seen.add(compact)  # a plate may be all letters, if it is all that was typed
                yield Name(written.upper(), compact, tuple(range(first, last + 1)))


def _is_part_of_a_day(start: int, end: int, days: Iterable[tuple[int, int]]) -> bool:
    """Tell whether a stretch of the text takes part in a day and is not the whole of it."""
    return any(
        start < till and end > since and (start, end) != (since, till) for since, till in days
    )
