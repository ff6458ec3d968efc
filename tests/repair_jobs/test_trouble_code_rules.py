"""Codes as people type them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.trouble_code import (
    CodeTrouble,
    code_book,
    code_of_word,
    codes_in,
    read_code,
)


def test_codes_are_found_in_any_list_and_sentence() -> None:
    assert codes_in("p0300, P0171;P0300 u0100") == ("P0300", "P0171", "U0100")
    assert codes_in("misses damp (P0300); then PO171") == ("P0300", "P0171")
    assert codes_in("the cooed boo P03001 XP0300") == ()


@pytest.mark.parametrize("text", ["", "P03", "P0G00", "X0300", "P4300", "P0300 P0301", "ＰP0300"])
def test_what_is_no_code_is_refused_with_an_example(text: str) -> None:
    with pytest.raises(CodeTrouble, match="such as P0300"):
        read_code(text)


@pytest.mark.parametrize(
    ("code", "whose"),
    [
        *(("P0300", "standard"), ("P1300", "maker"), ("P2300", "standard")),
        *(("P3300", "maker"), ("P3400", "standard"), ("P3F00", "standard")),
        *(("C0300", "standard"), ("B1300", "maker"), ("U2300", "maker"), ("U3300", "reserved")),
    ],
)
def test_the_first_figures_say_who_gives_a_code_its_meaning(code: str, whose: str) -> None:
    # SAE J2012, from memory.
    assert read_code(code).defined_by == whose


def test_a_code_holds_what_the_command_prints() -> None:
    assert read_code(" p0300 ").as_json() == {
        "code": "P0300",
        "area": "powertrain",
        "defined_by": "standard",
        "meaning": "Misfire in random or several cylinders",
    }
    assert read_code("C1234").as_json()["meaning"] is None
    areas = {read_code(f"{letter}0100").area for letter in "PCBU"}
    assert areas == {"powertrain", "chassis", "body", "network"}


def test_general_and_single_cylinder_misfires_are_one_family() -> None:
    family = code_book().family
    assert [family(code) for code in ("P0300", "P0312", "P0171")] == ["misfire"] * 2 + [
        "lean mixture"
    ]
    assert [family(code) for code in ("P0313", "C0035")] == [None, None]


def test_every_meaning_belongs_to_a_standard_code() -> None:
    for code, meaning in code_book().meanings.items():
        assert read_code(code).defined_by == "standard"
        assert meaning.strip() == meaning != ""


@given(st.integers(0, 0xFFFF))
def test_a_code_survives_bytes_and_running_text(word: int) -> None:
    code = code_of_word(word)
    assert read_code(code.lower()).word == word
    if sum(c.isdigit() for c in code) >= 2:
        assert codes_in(f"stored {code.lower()}, cleared") == (code,)


def test_more_than_two_bytes_are_no_code() -> None:
    with pytest.raises(ValueError, match="two bytes"):
        code_of_word(0x10000)
