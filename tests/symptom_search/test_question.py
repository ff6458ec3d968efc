"""What is typed is read into symptoms, conditions, codes, part kinds, names and free words."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.symptom_search.question import Piece, Question, read_question, without
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary


@pytest.fixture
def read(words: Vocabulary, kinds: dict[str, PartKind]):  # type: ignore[no-untyped-def]
    def reading(text: str) -> Question:
        return read_question(text, words, kinds)

    return reading


def test_a_sentence_falls_into_its_kinds(read) -> None:  # type: ignore[no-untyped-def]
    question = read("misfire when damp P0300 spark plug Tuesday ")
    kinds = {piece.kind: piece.id for piece in question.pieces}
    assert kinds["code"] == "P0300"
    assert kinds["condition"] == "damp"
    assert kinds["part"] == "spark-plug"
    assert kinds["word"] == "tuesday"
    assert any(piece.shown == "misfire" for piece in question.pieces)


def test_only_the_last_word_is_unfinished_and_only_until_a_space(read) -> None:  # type: ignore[no-untyped-def]
    assert [word.unfinished for word in read("brake squ").words] == [False, True]
    assert not any(word.unfinished for word in read("brake squ ").words)


def test_words_that_say_nothing_are_left_out(read) -> None:  # type: ignore[no-untyped-def]
    assert [word.word for word in read("it is the wiper of my car ").words] == ["wiper"]


def test_what_is_denied_is_not_looked_for(read) -> None:  # type: ignore[no-untyped-def]
    question = read("no misfire, brakes squeal ")
    assert "misfire" not in [word.word for word in question.words]
    assert "misfire" not in [group.plain for group in question.groups]


def test_a_code_is_no_free_word_nor_a_name(read) -> None:  # type: ignore[no-untyped-def]
    question = read("p0300")
    assert question.codes == ("P0300",)
    assert question.words == ()
    assert question.names == ()


def test_what_may_name_a_car_is_a_few_neighbouring_words_with_a_digit(read) -> None:  # type: ignore[no-untyped-def]
    assert "AB12CDE" in [name.compact for name in read("ab-12 cde misses").names]


@pytest.mark.parametrize("piece", ["symptom", "condition", "code", "part", "word"])
def test_each_piece_can_be_taken_out(
    piece: str,
    words: Vocabulary,
    kinds: dict[str, PartKind],
) -> None:
    text = "misfire when damp P0300 spark plug Tuesday"
    out = next(p for p in read_question(text, words, kinds).pieces if p.kind == piece)
    left = read_question(without(text, out, words, kinds), words, kinds)
    assert out not in left.pieces
    assert {p.kind for p in left.pieces} >= {"symptom", "condition", "code", "part"} - {piece}


def test_a_piece_that_is_told_over_and_over_is_taken_out_wholly(words: Vocabulary) -> None:
    question = read_question("stalls " * 40, words, {})
    (piece,) = question.pieces
    assert without(question.text, piece, words, {}) == ""


@pytest.mark.parametrize("text", ["ab-12 cde misses uphill", "misses uphill AB12 CDE"])
def test_a_plate_can_be_taken_out_however_it_is_written(words: Vocabulary, text: str) -> None:
    plate = Piece("plate", "AB12CDE", "AB12CDE")
    assert without(text, plate, words, {}) == "misses uphill"


@pytest.mark.parametrize(("text", "left"), [("no misfire ", []), ("no heat ", ["heat"])])
def test_a_denied_word_is_looked_for_where_the_denial_is_the_symptom(
    words: Vocabulary, text: str, left: list[str]
) -> None:
    assert [word.word for word in read_question(text, words, {}).words] == left


def test_a_part_kind_that_is_called_by_signs_alone_is_never_named(
    words: Vocabulary, kinds: dict[str, PartKind]
) -> None:
    called = {"x": kinds["spark-plug"]._replace(name="—", also=("?!",), written=())}
    for text in ("", "—", "spark plug ?! —"):
        assert read_question(text, words, called).part_kinds == ()


@given(st.text(max_size=400))
def test_anything_can_be_read(words: Vocabulary, kinds: dict[str, PartKind], text: str) -> None:
    question = read_question(text, words, kinds)
    assert len(question.words) <= 12
    for piece in question.pieces:
        assert piece.shown


@pytest.mark.parametrize("text", ["p 0303", "P-0303 misfire", "code p 0303 at idle"])
def test_a_code_may_be_told_with_its_letter_apart(words: Vocabulary, text: str) -> None:
    question = read_question(text, words, {})
    assert question.codes == ("P0303",)
    assert all(name.compact != "0303" for name in question.names)
    assert all("0303" not in word.word for word in question.words)


def test_a_word_of_a_condition_that_was_told_is_no_beginning_of_another(read) -> None:  # type: ignore[no-untyped-def]
    question = read("shudders when i give it gas")
    assert question.conditions == ("pulling",)
    assert [(word.word, word.unfinished) for word in question.words if word.word == "gas"] == [
        ("gas", False)
    ]
    assert "gas" not in [piece.id for piece in question.pieces]
    assert [word.unfinished for word in read("gas").words] == [True]  # it may become a gasket


@pytest.mark.parametrize(
    "said",
    [
        "give it gas and it coughs",
        "coughs when I give it gas, give it gas and it dies again after that",
        "give it gas, give it gas",
        "with my foot down it coughs, put my foot down",
    ],
)
def test_a_condition_told_twice_leaves_no_word_to_look_for(read, said: str) -> None:  # type: ignore[no-untyped-def]
    question = read(f"{said} now")
    assert question.conditions == ("pulling",)
    told = {"gas", "give", "foot", "put"}
    assert told.isdisjoint(piece.id for piece in question.pieces if piece.kind == "word")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("stalls", "stalls"),
        ("it keeps stalling", "stalls"),
        ("the engine stalls", "stalls"),
        ("conks out", "stalls"),
        ("stalls at lights", "stalls when stopping"),
        ("stalls when I brake", "stalls when stopping"),
        ("stalls on the motorway", "dies while driving"),
        ("starts and stalls", "starts then dies"),
    ],
)
def test_stalling_is_read_as_one_sort_of_it_only_where_it_was_told(said: str, read: str) -> None:
    question = read_question(said, shop_vocabulary(), {})
    assert [piece.shown for piece in question.pieces if piece.kind == "symptom"] == [read]
    near = {one.plain for group in question.groups for one in shop_vocabulary().near(group.id)}
    if read == "stalls":  # jobs of each sort are found for it, and shown as neighbours
        assert {"stalls when stopping", "dies while driving", "starts then dies"} <= near
