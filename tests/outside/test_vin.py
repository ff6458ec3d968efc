"""VINs against the published samples and tables of 49 CFR 565 and ISO 3779."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.vin import VinTrouble, expected_check_digit, model_years, read_vin

VALID = [
    "1G4AH59H45G118341",  # 49 CFR 565, worked sample: sum 411, remainder 4
    "1J9RP1A36A1644345",  # NHTSA outline for new manufacturers, sample: sum 314, remainder 6
    "1M8GDM9AXKP042788",  # widely published example, from memory: remainder 10, X
    "11111111111111111",  # widely published example, from memory: sum 89, remainder 1
    "5GZCZ43D13S812715",  # widely published example, from memory: sum 408
    "1HGCM82633A004352",  # widely published example, from memory: sum 311
    "1G1JC5444R7252367",  # SAE J1979, service 09 message example, from memory: sum 378
]


@pytest.mark.parametrize("vin", VALID)
def test_published_samples_have_the_check_digit_they_carry(vin: str) -> None:
    assert read_vin(vin).check_digit_ok


@pytest.mark.parametrize(
    ("vin", "expected"),
    [
        # Worked out from the table of 49 CFR 565.15(c), not published as such:
        ("1D4GP00R55B123456", "X"),
        ("1M8GDM9AXKP042789", "1"),  # last character changed
        ("1M8GDM9AXKP042778", "7"),  # one character changed
        ("1MG8DM9AXKP042788", "9"),  # two characters swapped
    ],
)
def test_a_wrong_character_asks_for_another_check_digit(vin: str, expected: str) -> None:
    reading = read_vin(vin)
    assert not reading.check_digit_ok
    assert reading.expected_check_digit == expected


def test_year_letters_follow_the_published_table() -> None:
    # 49 CFR 565.15, Table VII.
    table = {
        **{"A": 1980, "H": 1987, "J": 1988, "N": 1992, "P": 1993, "R": 1994, "T": 1996},
        **{"V": 1997, "Y": 2000, "1": 2001, "9": 2009},
    }
    assert {code: model_years(code)[0] for code in table} == table
    # The same table's later cycle.
    later = {"A": 2010, "H": 2017, "J": 2018, "L": 2020, "S": 2025, "T": 2026, "Y": 2030, "1": 2031}
    assert {code: model_years(code)[1] for code in later} == later


@pytest.mark.parametrize("code", ["I", "O", "Q", "U", "Z", "0"])
def test_six_characters_stand_for_no_year(code: str) -> None:
    # 49 CFR 565.15, Table VII leaves them out.
    assert model_years(code) == ()


@pytest.mark.parametrize("letter", ["I", "O", "Q"])
def test_three_letters_are_in_no_vin(letter: str) -> None:
    # ISO 3779; 49 CFR 565.15: never I, O or Q.
    with pytest.raises(VinTrouble, match=f"letter {letter}"):
        read_vin("1M8GDM9AXKP04278" + letter)


def test_letters_of_one_value_cannot_be_told_apart() -> None:
    # 49 CFR 565.15(c), Table III: S and 2 have one value, S and 5 have not.
    assert expected_check_digit("2" * 17) == expected_check_digit("S" * 17)
    assert expected_check_digit("5" + "1" * 16) != expected_check_digit("S" + "1" * 16)
