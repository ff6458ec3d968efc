"""The vocabulary's files: read, checked, and refused in words a shop owner can act on."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path
from typing import Any, NoReturn

from desktop_app.language import tr
from desktop_app.repair_jobs.concern_conditions import CONDITION_IDS
from desktop_app.repair_jobs.systems import SYSTEMS
from desktop_app.repair_jobs.trouble_code import codes_in
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.own_program.tables_read import tables_read
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.subjects import Things
from desktop_app.symptom_search.told_words import NOTHING_BEFORE, WordReader
from desktop_app.symptom_search.vocabulary import Group, TwoMeanings, Vocabulary
from desktop_app.symptom_search.vocabulary_read import as_kept, read_before

_WORDS = frozenset(("id", "plain", "means"))
_LISTS = frozenset(("heard", "shop", "when", "systems", "codes", "near"))
_PHRASES = ("nothing", "no_condition", "parts", "whole", "ordinary")
_THINGS = ("things", "which")
_TABLES = frozenset(
    (
        "groups",
        "conditions",
        "mended",
        "one_word",
        "two_meanings",
        "akin",
        "sorts",
        *_PHRASES,
        *_THINGS,
    )
)
# Words of denials, which are known without standing in a phrase.
_TURNS = "no not never without but though although however instead gone cured fixed longer more"
_SYSTEM_IDS = frozenset(system.id for system in SYSTEMS)


class VocabularyTrouble(ShopTrouble):
    """A vocabulary file cannot be used; the message names the file, the group and the key."""


@cache
def shop_vocabulary() -> Vocabulary:
    """Return the program's own vocabulary, read once, when it is first asked for."""
    return read_vocabulary(resource_path("symptoms"))


def read_vocabulary(folder: Path) -> Vocabulary:
    """Read all TOML files of a folder as one vocabulary; a VocabularyTrouble says what is wrong."""
    return _read(folder)[0]


def read_anew(folder: Path) -> str:
    """Return what the file beside these holds, of which `read_vocabulary` makes use."""
    _, reader, phrases, texts = _read(folder, anew=True)
    return as_kept(texts, reader.read_now(phrases))


def _read(
    folder: Path, *, anew: bool = False
) -> tuple[Vocabulary, WordReader, list[str], list[str]]:
    """Return the vocabulary, what reads its words, the phrases that it takes apart, and the texts.

    With `anew` nothing is made use of that was worked out before.
    """
    texts: list[str] = []
    groups: list[Group] = []
    conditions: dict[str, Iterable[str]] = {}
    words: dict[str, dict[str, str]] = {"mended": {}, "one_word": {}}
    two_meanings: list[TwoMeanings] = []
    akin: dict[str, frozenset[str]] = {}
    listed: dict[str, list[str]] = {name: [] for name in _PHRASES}
    things: dict[str, dict[str, tuple[str, ...]]] = {name: {} for name in _THINGS}
    for path in sorted(folder.glob("*.toml")):
        data = _loaded(path, texts)
        groups.extend(_group(entry, path.name) for entry in _tables(data, "groups", path.name))
        for identity, phrases in _table(data, "conditions", path.name).items():
            if identity not in CONDITION_IDS:
                _refuse(
                    path.name,
                    tr("there is no condition “{identity}”", identity=identity),
                    sorted(CONDITION_IDS),
                )
            conditions[identity] = _strings(phrases, path.name, f"conditions.{identity}")
        for name, kept in words.items():
            kept.update(_pairs(data, name, path.name))
        two_meanings.extend(
            _two_meanings(entry, path.name) for entry in _tables(data, "two_meanings", path.name)
        )
        _add_akin(akin, data, path.name)
        for name, kept_things in things.items():
            for key, those in _table(data, name, path.name).items():
                kept_things[key] = _strings(those, path.name, f"{name}.{key}")
        for name, kept_phrases in listed.items():
            told = _table(data, name, path.name).get("phrases", [])
            kept_phrases.extend(_strings(told, path.name, f"{name}.phrases"))
    if not groups:
        raise VocabularyTrouble(tr("No symptom groups were found in {name}.", name=folder.name))
    _check_together(groups)
    told = [phrase for group in groups for phrase in (*group.phrases, group.means)]
    told += [
        phrase
        for phrases in (*conditions.values(), listed["nothing"], listed["no_condition"])
        for phrase in phrases
    ]
    told += [word for one in akin.values() for word in one] + [_TURNS]
    named = [name for those in things.values() for names in those.values() for name in names]
    ordinary = (*" ".join(listed["ordinary"]).split(), *" ".join(named).split())
    before = NOTHING_BEFORE if anew else read_before(folder, texts)
    reader = WordReader(words["mended"], words["one_word"], listed["whole"], told, ordinary, before)
    parts = " ".join(listed["parts"]).split()
    vocabulary = Vocabulary(
        *(groups, conditions, reader, two_meanings, listed["nothing"], akin),
        no_condition=listed["no_condition"],
        things=Things(things["things"], things["which"], parts),
    )
    return vocabulary, reader, [*told, *named, *things["which"]], texts


def _add_akin(akin: dict[str, frozenset[str]], data: Mapping[str, Any], file: str) -> None:
    """Add what may stand for a word: any of its list, and what is a sort of it."""
    for name, listed in _table(data, "akin", file).items():
        among = frozenset((name, *_strings(listed, file, f"akin.{name}")))
        for word in among:
            akin[word] = akin.get(word, frozenset()) | among
    for name, sorts in _table(data, "sorts", file).items():
        akin[name] = akin.get(name, frozenset()).union(_strings(sorts, file, f"sorts.{name}"))


def _loaded(path: Path, texts: list[str]) -> dict[str, Any]:
    try:
        texts.append(path.read_text(encoding="utf-8"))
        data = tables_read().values(texts[-1])
    except ValueError as error:  # no TOML, or no UTF-8
        raise VocabularyTrouble(
            tr("{name} cannot be read: {error}.", name=path.name, error=error),
            do=tr("Mend that line, or take the file away."),
        ) from error
    unknown = sorted(set(data) - _TABLES)
    if unknown:
        _refuse(
            path.name,
            tr("“{key}” is not a part of a vocabulary", key=unknown[0]),
            sorted(_TABLES),
        )
    return data


def _group(entry: Any, file: str) -> Group:
    if not isinstance(entry, dict):
        _refuse(file, tr("a group is not a table"), [tr("[[groups]] with id, plain, means, heard")])
    name = entry.get("id") or entry.get("plain") or tr("without an id")
    unknown = sorted(set(entry) - _WORDS - _LISTS - {"instead"})
    if unknown:
        _refuse(
            file,
            tr("group {name} has a key “{key}”", name=name, key=unknown[0]),
            sorted(_WORDS | _LISTS),
        )
    instead = _pairs(entry, "instead", file)
    for key in sorted(_WORDS):
        if not isinstance(entry.get(key), str) or not entry[key].strip():
            _refuse(
                file,
                tr("group {name} has no “{key}”", name=name, key=key),
                [tr("a word or two in quotes")],
            )
    lists = {key: _strings(entry.get(key, []), file, f"{name}.{key}") for key in _LISTS}
    if not lists["heard"]:
        _refuse(
            file,
            tr("group {name} has nothing in “heard”", name=name),
            [tr("what a customer would say")],
        )
    for key, allowed in (("when", CONDITION_IDS), ("systems", _SYSTEM_IDS)):
        for value in (*lists[key], *(instead if key == "when" else ())):
            if value not in allowed:
                _refuse(
                    file,
                    tr(
                        "group {name}: “{value}” in “{key}” is not known",
                        name=name,
                        value=value,
                        key=key,
                    ),
                    sorted(allowed),
                )
    for code in lists["codes"]:
        if codes_in(code) != (code,):
            _refuse(
                file,
                tr("group {name}: “{code}” is not a trouble code", name=name, code=code),
                [tr("codes such as P0300")],
            )
    return Group(
        id=entry["id"], plain=entry["plain"], means=entry["means"], instead=instead, **lists
    )


def _check_together(groups: Iterable[Group]) -> None:
    """Check what holds between groups: ids and names once, neighbours that exist."""
    listed = tuple(groups)
    ids = {group.id for group in listed}
    seen: set[str] = set()
    for group in listed:
        for name in dict.fromkeys((group.id, group.plain)):
            if name in seen:
                raise VocabularyTrouble(tr("Two symptom groups are called “{name}”.", name=name))
        seen |= {group.id, group.plain}
        for other in (*group.near, *group.instead.values()):
            if other not in ids:
                raise VocabularyTrouble(
                    tr(
                        "Group {name} names “{other}” as near, and there is no such group.",
                        name=group.id,
                        other=other,
                    )
                )


def _two_meanings(entry: Any, file: str) -> TwoMeanings:
    if not isinstance(entry, dict) or not isinstance(entry.get("word"), str):
        _refuse(file, tr("an entry of two_meanings has no “word”"), [tr("a word in quotes")])
    if not isinstance(entry.get("ask"), str):
        _refuse(
            file,
            tr("“{word}” has no “ask”", word=entry["word"]),
            [tr("the question to ask, in quotes")],
        )
    settled = _strings(entry.get("settled_by", []), file, f"{entry['word']}.settled_by")
    return TwoMeanings(entry["word"], entry["ask"], settled)


def _tables(data: Mapping[str, Any], name: str, file: str) -> list[Any]:
    found = data.get(name, [])
    if not isinstance(found, list):
        _refuse(file, tr("“{name}” is not a list of tables", name=name), [f"[[{name}]]"])
    return list(found)


def _table(data: Mapping[str, Any], name: str, file: str) -> dict[str, Any]:
    found = data.get(name, {})
    if not isinstance(found, dict):
        _refuse(file, tr("“{name}” is not a table", name=name), [f"[{name}]"])
    return dict(found)


def _pairs(data: Mapping[str, Any], name: str, file: str) -> dict[str, str]:
    found = _table(data, name, file)
    for word, meaning in found.items():
        if not isinstance(meaning, str) or not meaning:
            _refuse(
                file,
                tr("“{word}” in “{name}” has no meaning", word=word, name=name),
                [tr("a word in quotes")],
            )
    return found


def _strings(value: Any, file: str, where: str) -> tuple[str, ...]:
    if not isinstance(value, list) or not all(isinstance(v, str) and v.strip() for v in value):
        _refuse(
            file,
            tr("{where} is not a list of phrases", where=where),
            ['["one phrase", "another"]'],
        )
    return tuple(value)


def _refuse(file: str, what: str, accepted: Iterable[str]) -> NoReturn:
    raise VocabularyTrouble(
        f"{file}: {what}.", do=tr("Accepted: {accepted}.", accepted=", ".join(accepted))
    )
