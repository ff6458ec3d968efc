"""What the program promises about VINs typed in a shop."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.vin import (
    VinTrouble,
    expected_check_digit,
    is_well_formed,
    matching_vin,
    read_vin,
    vin_question,
)

CHARACTERS = "ABCDEFGHJKLMNPRSTUVWXYZ0123456789"
SAME_VALUE = ["AJ1", "BKS2", "CLT3", "DMU4", "ENV5", "FW6", "GPX7", "HY8", "RZ9", "0"]
SAMPLE = "1M8GDM9AXKP042788"

bodies = st.text(CHARACTERS, min_size=17, max_size=17)


def made_valid(body: str) -> str:
    return body[:8] + expected_check_digit(body) + body[9:]


@given(bodies, st.integers(0, 16), st.sampled_from(CHARACTERS))
def test_every_changed_character_is_noticed_unless_its_value_is_the_same(
    body: str, place: int, other: str
) -> None:
    vin = made_valid(body)
    changed = vin[:place] + other + vin[place + 1 :]
    same_value = any(vin[place] in letters and other in letters for letters in SAME_VALUE)
    if place == 8:
        assert read_vin(changed).check_digit_ok == (changed == vin)
    else:
        assert read_vin(changed).check_digit_ok == same_value


@given(bodies)
def test_spaces_and_small_letters_do_not_matter(body: str) -> None:
    vin = made_valid(body)
    typed = f" {vin[:3].lower()} {vin[3:9]}\t{vin[9:].lower()} "
    assert read_vin(typed).vin == vin
    assert matching_vin(typed) == vin


@given(st.text())
def test_any_text_is_read_or_refused_with_what_is_accepted(text: str) -> None:
    if len(text) == 17 and text.isascii() and set(text.upper()) <= set(CHARACTERS):
        assert read_vin(text).vin == text.upper()
    else:
        with pytest.raises(VinTrouble) as caught:
            read_vin("/" + text)  # the stroke makes sure that it cannot be a VIN
        assert caught.value.do
        assert len(caught.value.sentence().splitlines()) == 1
    assert matching_vin(matching_vin(text)) == matching_vin(text)


def test_letters_that_look_like_digits_match_the_digits() -> None:
    assert matching_vin("IM8GDM9AXKPO42788") == SAMPLE
    assert is_well_formed("IM8GDM9AXKPO42788")


@pytest.mark.parametrize(("text", "says"), [("1M8GDM9AXKP04278", "16"), (SAMPLE + "1", "18")])
def test_a_wrong_length_is_refused_with_the_count(text: str, says: str) -> None:
    with pytest.raises(VinTrouble, match=says):
        read_vin(text)


@pytest.mark.parametrize(("letter", "place"), [("I", 1), ("O", 8), ("Q", 17)])
def test_a_letter_that_no_vin_has_is_refused_with_its_place(letter: str, place: int) -> None:
    typed = SAMPLE[: place - 1] + letter + SAMPLE[place:]
    with pytest.raises(VinTrouble, match=f"has the letter {letter} in place {place}"):
        read_vin(typed)


def test_a_sign_that_no_vin_has_is_refused_with_its_place() -> None:
    with pytest.raises(VinTrouble, match="has '/' in place 3"):
        read_vin(f"1M/{SAMPLE[3:]}")


def test_a_reading_holds_what_the_command_prints() -> None:
    json = read_vin(SAMPLE).as_json()
    assert json["vin"] == SAMPLE
    assert json["check_digit_ok"] is True
    assert json["expected_check_digit"] == "X"
    assert json["region"] == "North America"
    assert json["model_years"] == [1989, 2019]
    assert any("1989" in note for note in json["notes"])


def test_a_failed_check_digit_is_asked_about_and_not_refused() -> None:
    wrong = SAMPLE[:-1] + "9"
    assert not read_vin(wrong).check_digit_ok
    assert "Read it again" in (vin_question(wrong) or "")
    assert vin_question(SAMPLE) is None
    assert vin_question("") is None
    assert "Is it complete?" in (vin_question("M9AXKP04") or "")
