"""Trouble codes against the byte layout of ISO 15031-5/-6 and SAE J2012."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.trouble_code import code_of_word, read_code


def test_the_message_of_the_standard_gives_its_six_codes() -> None:
    # Example message of ISO 15031-5 as carried by a public protocol test.
    message = bytes.fromhex("4306014301960234 02CD 0357 0A24".replace(" ", ""))[2:]
    words = [int.from_bytes(message[i : i + 2], "big") for i in range(0, len(message), 2)]
    codes = [code_of_word(word) for word in words]
    assert codes == ["P0143", "P0196", "P0234", "P02CD", "P0357", "P0A24"]


@pytest.mark.parametrize(
    ("word", "code"),
    [
        # Worked out from the layout: bits 15-14 the letter, 13-12 the first digit.
        (0x1301, "P1301"),
        (0x4510, "C0510"),
        (0x0300, "P0300"),
        (0xC100, "U0100"),
        (0x8134, "B0134"),
        (0x3400, "P3400"),
    ],
)
def test_two_bytes_and_five_characters_are_one_thing(word: int, code: str) -> None:
    assert code_of_word(word) == code
    assert read_code(code).word == word


def test_every_pair_of_bytes_comes_back() -> None:
    assert all(read_code(code_of_word(word)).word == word for word in range(0x10000))


@pytest.mark.parametrize(
    ("code", "defined_by"),
    [
        # SAE J2012, first digit; from memory.
        ("P0300", "standard"),
        ("P1301", "maker"),
        ("P2135", "standard"),
        ("P3000", "maker"),
        ("P33FF", "maker"),
        ("P3400", "standard"),
        ("C0035", "standard"),
        ("C1234", "maker"),
        ("B2AAA", "maker"),
        ("U3000", "reserved"),
    ],
)
def test_the_first_digit_says_who_defined_the_code(code: str, defined_by: str) -> None:
    assert read_code(code).defined_by == defined_by


def test_misfire_codes_name_their_cylinder() -> None:
    # SAE J2012: P0300 random or several, P0301 to P0312 cylinders 1 to 12 (secondary sources).
    assert read_code("P0300").meaning == "Misfire in random or several cylinders"
    for cylinder in range(1, 13):
        meaning = read_code(f"P03{cylinder:02d}").meaning
        assert meaning == f"Misfire in cylinder {cylinder}"
