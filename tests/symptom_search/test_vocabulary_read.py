"""What was worked out from the vocabulary's files before is what would be worked out now."""

from __future__ import annotations

import json
import os
import shutil
from pathlib import Path

import pytest

from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.symptom_search.told_words import ReadBefore, WordReader
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import read_anew, read_vocabulary
from desktop_app.symptom_search.vocabulary_read import FILE, as_kept, read_before
from tests.symptom_search.asked_sentences import asked_sentences

SYMPTOMS = resource_path("symptoms")
SAID = tuple(one.text for one in asked_sentences())[::7]


def meant(words: Vocabulary) -> list[tuple[tuple[str, ...], tuple[str, ...], bool]]:
    """What sentences are read as, and whether a slip was mended."""
    return [
        (tuple(g.id for g in words.groups_in(one)), words.conditions_in(one), words.is_word(one))
        for one in (*SAID, "misfirs wenn dampp", "over heating uphil", "qzx")
    ]


@pytest.fixture
def apart(tmp_path: Path) -> Path:
    """A folder with the program's files."""
    return Path(shutil.copytree(SYMPTOMS, tmp_path / "symptoms"))


def test_the_file_beside_the_words_is_made_from_them() -> None:
    kept = SYMPTOMS / FILE
    if os.environ.get("BENCHWITNESS_WRITE_GOLDEN"):
        kept.write_text(read_anew(SYMPTOMS), "utf-8")
    assert kept.read_text("utf-8") == read_anew(SYMPTOMS), (
        "the symptoms' words were changed: see DEVELOPERS.md, “A symptom or a phrase”"
    )


def test_sentences_mean_the_same_without_the_file(apart: Path) -> None:
    with_it = meant(read_vocabulary(apart))
    (apart / FILE).unlink()
    assert meant(read_vocabulary(apart)) == with_it


def test_nearly_no_phrase_is_taken_apart_with_the_file(
    apart: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    anew: list[str] = []
    own = WordReader._compared
    monkeypatch.setattr(WordReader, "_compared", lambda at, w: anew.append("") or own(at, w))
    read_vocabulary(apart)
    assert len(anew) < 20
    (apart / FILE).unlink()
    read_vocabulary(apart)
    assert len(anew) > 1000


@pytest.mark.parametrize("torn", ["", "{", "[]", '{"of": 1}', "\x00", '{"of": "WHOLE"}'])
def test_a_torn_file_counts_for_nothing(apart: Path, torn: str) -> None:
    whole = meant(read_vocabulary(apart))
    of = json.loads((apart / FILE).read_text("utf-8"))["of"]
    (apart / FILE).write_text(torn.replace("WHOLE", of), "utf-8")
    assert meant(read_vocabulary(apart)) == whole


def test_a_file_made_from_other_words_counts_for_nothing(apart: Path) -> None:
    words = apart / "running.toml"
    words.write_text(words.read_text("utf-8").replace('"hiccups"', '"wobbles a lot"'), "utf-8")
    changed = read_vocabulary(apart)
    assert "misfire-random" in [one.id for one in changed.groups_in("it wobbles a lot")]
    assert not changed.groups_in("it hiccups")


def test_what_is_kept_is_read_again_as_it_was(tmp_path: Path) -> None:
    read = ReadBefore({"won't start": ("wont", "start"), "": ()}, frozenset(("start", "wont")))
    (tmp_path / FILE).write_text(as_kept(["a", "b"], read), "utf-8")
    assert read_before(tmp_path, ["a", "b"]) == read
    assert read_before(tmp_path, ["a", "c"]) == ReadBefore()
