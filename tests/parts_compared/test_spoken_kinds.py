"""The kinds that come with the program in another language: what people read changes, no more."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from desktop_app import language
from desktop_app.commands.shop_place import kinds_of
from desktop_app.parts_compared.heights_read import may_be_height
from desktop_app.parts_compared.kind_actions import change_own_kind, copy_kind, keep_own_kind
from desktop_app.parts_compared.mark_for_dimension import mark_for
from desktop_app.parts_compared.part_kinds.kind_lines import Part, lines_of, with_lines
from desktop_app.parts_compared.part_kinds.kind_names import kind_called
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.our_words import ours_kept, ours_said
from desktop_app.parts_compared.part_kinds.own_kind import with_change
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.part_sets.part_set_file import read_set
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.question import read_question
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.spoken.spoken_files import ROOT, SPOKEN, said_in

SPANISH = said_in(SPOKEN / "es" / "part_kinds.ts")
FILES = sorted((ROOT / "resources" / "part_kinds").glob("*.toml"))
WRITTEN = {one.id: one for one in (read_kind(f.read_text("utf-8"), f.name) for f in FILES)}


def in_spanish(text: str) -> str:
    """Return a text of the kinds in Spanish."""
    return SPANISH.get(text) or text


SPOKEN_KINDS = {
    one.id: one for one in (read_kind(f.read_text("utf-8"), f.name, in_spanish) for f in FILES)
}
EVERY = pytest.mark.parametrize("kind", sorted(WRITTEN))


@pytest.fixture
def spanish() -> Iterator[None]:
    """Speak Spanish as long as the test runs; kinds that were read in English are read anew."""
    with in_language(in_spanish, "es"):
        yield


@contextmanager
def in_language(said: Callable[[str], str], code: str) -> Iterator[None]:
    """Speak a language while the block runs, as a program of its own would."""
    read_kind.cache_clear()
    language.speak(said, code)
    try:
        yield
    finally:
        language.speak(str)
        read_kind.cache_clear()


def kept(kind: PartKind) -> PartKind:
    """Return the kind without what is only read by people."""
    return kind._replace(
        **{"name": "", "also": (), "cautions": (), "written": ()},
        dimensions=tuple(
            one._replace(label="", basis="", how="", wear="", written="") for one in kind.dimensions
        ),
        conditions=tuple(one._replace(means="") for one in kind.conditions),
        wrongs=tuple(one._replace(say="") for one in kind.wrongs),
    )


@EVERY
def test_what_is_kept_and_compared_is_the_same_in_every_language(kind: str) -> None:
    written, spoken = WRITTEN[kind], SPOKEN_KINDS[kind]
    assert kept(spoken) == kept(written)
    assert spoken.name != written.name
    assert spoken.plain_names == (written.name, *written.also)


@EVERY
def test_a_photo_s_marks_serve_the_same_dimensions_in_every_language(kind: str) -> None:
    for one, other in zip(WRITTEN[kind].dimensions, SPOKEN_KINDS[kind].dimensions, strict=True):
        assert mark_for(one) == mark_for(other)
        assert may_be_height(one) == may_be_height(other)


@EVERY
def test_a_spoken_kind_is_kept_in_the_words_of_the_program(kind: str, spanish: None) -> None:
    body = kind_as_toml(SPOKEN_KINDS[kind], ours_kept)
    assert read_kind(body, "ours") == WRITTEN[kind]
    assert read_kind(body, "ours", ours_said) == SPOKEN_KINDS[kind]


def test_what_a_shop_copies_in_one_language_is_read_in_another(shop: ShopRecord) -> None:
    with in_language(in_spanish, "es"):
        kinds = kinds_of(shop)
        keep_own_kind(shop, kinds["battery"])
        copy_kind(shop, kinds["distributor-rotor"], "Rotor marino", kinds)
        copy = kinds_of(shop)["rotor-marino"]
        assert copy.cautions == SPOKEN_KINDS["distributor-rotor"].cautions
        lines = "\n".join((*copy.cautions[1:], "Sin prisa."))
        change_own_kind(shop, copy, lambda kept: with_lines(kept, "cautions", lines))
        change_own_kind(
            shop, copy, lambda kept: with_change(kept, copy.dimensions[0], essential=False)
        )
        assert kinds_of(shop)["rotor-marino"].cautions == (*copy.cautions[1:], "Sin prisa.")
    kinds, rotor = kinds_of(shop), WRITTEN["distributor-rotor"]
    assert kinds["battery"] == WRITTEN["battery"]
    assert kinds["rotor-marino"].name == "Rotor marino"
    assert kinds["rotor-marino"].cautions == (*rotor.cautions[1:], "Sin prisa.")
    assert kinds["rotor-marino"].dimensions[1:] == rotor.dimensions[1:]
    assert kinds["rotor-marino"].conditions == rotor.conditions
    assert kinds["rotor-marino"].wrongs == rotor.wrongs
    keep_own_kind(shop, kinds["spark-plug"])
    with in_language(in_spanish, "es"):
        assert kinds_of(shop)["spark-plug"] == SPOKEN_KINDS["spark-plug"]


@EVERY
def test_lists_of_checks_keep_their_words_however_they_are_shown(kind: str, spanish: None) -> None:
    one = SPOKEN_KINDS[kind]
    parts: tuple[Part, ...] = ("refit", "proof")
    for part in parts:
        lines = lines_of(one, part)
        assert not set(lines) & set(lines_of_english(one, part))
        assert with_lines(one, part, "\n".join(lines)) == one
    typed = with_lines(one, "refit", "\n".join((*lines_of(one, "refit"), "Sin prisa.")))
    assert [check.say for check in typed.refit] == [*(c.say for c in one.refit), "Sin prisa."]


def lines_of_english(kind: PartKind, part: Part) -> tuple[str, ...]:
    """Return a list of the kind as its field shows it in English."""
    with language.as_written():
        return lines_of(kind, part)


@EVERY
def test_no_two_things_of_one_kind_are_called_alike(kind: str, spanish: None) -> None:
    one = SPOKEN_KINDS[kind]
    for words in (
        [each.label for each in one.dimensions],
        [one.term_words(each.term) for each in one.conditions],
        [in_spanish(each) for each in one.views],
        [one.place_said(each) for each in one.sides],
    ):
        assert len(set(words)) == len(words), words


@EVERY
def test_a_word_that_is_read_is_kept_as_the_kind_has_it(kind: str, spanish: None) -> None:
    for one in SPOKEN_KINDS[kind].dimensions:
        for choice in one.choices:
            assert one.word_kept(f"{one.word_said(choice)} ") == choice
        assert one.word_kept("something else") == one.word_said("something else")


@EVERY
def test_a_side_is_kept_as_the_kind_has_it_however_it_is_shown(kind: str, spanish: None) -> None:
    one = SPOKEN_KINDS[kind]
    for side in one.sides:
        assert one.place_said(side) == in_spanish(side) != side
        assert one.place_kept(in_spanish(side)) == one.place_kept(side) == side


@pytest.mark.parametrize(
    ("kind", "shown", "kept"),
    [
        ("oxygen-sensor", "bancada 1 antes del catalizador", "bank 1 before the catalyst"),
        ("brake-pads", "izquierda ", "left "),  # somebody goes on typing
        ("brake-pads", "izquierda, la más nueva", "izquierda, la más nueva"),
        ("brake-pads", "a la izquierda", "a la izquierda"),
        ("brake-pads", "Izquierda", "Izquierda"),
        ("brake-pads", "", ""),
        ("fuse", "izquierda", "izquierda"),  # it has no sides
    ],
)
def test_nothing_but_sides_is_kept_in_english(
    kind: str, shown: str, kept: str, spanish: None
) -> None:
    one = SPOKEN_KINDS[kind]
    assert one.place_kept(shown) == kept
    assert one.place_said(kept) == shown


def test_the_kinds_and_the_shop_s_own_ones_beside_each_other(tmp_path: Path, spanish: None) -> None:
    ours = tmp_path / "ours"
    comes_with_it = tmp_path / "built_in"
    for folder in (ours, comes_with_it):
        folder.mkdir()
        text = kind_as_toml(WRITTEN["battery"]._replace(id=folder.name.replace("_", "-")))
        (folder / "battery.toml").write_text(text, "utf-8")
    kinds = load_kinds([comes_with_it, ours]).kinds
    assert kinds["built-in"].name == "batería"
    assert kinds["ours"].name == "battery"


@pytest.mark.parametrize("text", ["bujía", "spark plug", "BUJÍA", "spark-plug"])
def test_a_kind_is_called_in_both_languages(text: str) -> None:
    found = kind_called(text, SPOKEN_KINDS)
    assert found is not None
    assert found.id == "spark-plug"


@pytest.mark.parametrize("asked", ["tapa del distribuidor", "distributor cap"])
def test_old_jobs_are_asked_for_a_part_in_both_languages(asked: str) -> None:
    assert read_question(asked, shop_vocabulary(), SPOKEN_KINDS).part_kinds == ("distributor-cap",)


def test_sets_of_parts_are_spoken_too() -> None:
    for file in sorted((ROOT / "resources" / "part_sets").glob("*.toml")):
        text = file.read_text("utf-8")
        written, spoken = read_set(text, file.name), read_set(text, file.name, in_spanish)
        assert (spoken.id, spoken.kinds, spoken.unit) == (written.id, written.kinds, written.unit)
        assert [one.name for one in spoken.given] == [one.name for one in written.given]
        assert all(
            one != other
            for one, other in (
                (spoken.name, written.name),
                (spoken.say_touch, written.say_touch),
                *((a.how, b.how) for a, b in zip(spoken.given, written.given, strict=True)),
            )
        )
