"""`spark` keeps its contract: one document, or one line of refusal."""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.stored_pairs import pairs_of_job
from desktop_app.shop_record.record import ShopRecord
from tests.commands.test_command_line import Shell
from tests.parts_compared.sheet_story import a_rotor, kinds

GIVEN = ("spark", "--rotor-gap-mm", "1.5", "--plug-gap-mm", "1.1", "--compression-ratio", "9.5")


@pytest.fixture
def shell(capsys: pytest.CaptureFixture[str]) -> Shell:
    return Shell(capsys)


def read(record: ShopRecord, job: int, kind: str, dimension: str, old: str, new: str) -> None:
    made = actions.lay_side_by_side(record, job, kind).made
    known = kinds()[kind].dimension(dimension)
    assert made is not None
    assert known is not None
    actions.write_readings(record, made, known, "removed", old)
    if new:
        actions.write_readings(record, made, known, "replacement", new)


@pytest.fixture
def rotor_place(tmp_path: Path) -> str:
    """A shop whose job J-104 has one pair: a rotor."""
    record = new_place(tmp_path / "rotor")
    a_rotor(record)
    record.close()
    return str(tmp_path / "rotor")


@pytest.fixture
def place(tmp_path: Path) -> str:
    """A shop whose job J-104 has rotor, cap, plug and, as pair 4, a lead."""
    record = new_place(tmp_path / "shop")
    job = a_rotor(record).job
    read(record, job, "distributor-cap", "terminal-radius", "34.90", "34.88")
    read(record, job, "spark-plug", "gap", "1.30", "1.05")
    read(record, job, "plug-wire", "length", "600", "600")
    record.close()
    return str(tmp_path / "shop")


def test_given_gaps(shell: Shell) -> None:
    said = shell(*GIVEN, "--json")
    assert set(said) == {
        *("rotor_gap_kv", "plug_gap_kv", "sum_kv", "larger_kv"),
        *("method", "valid", "warnings"),
    }
    assert said["valid"] is True
    assert said["larger_kv"] == max(said["rotor_gap_kv"], said["plug_gap_kv"])
    assert said["sum_kv"] == said["rotor_gap_kv"] + said["plug_gap_kv"]


def test_the_air_can_be_said(shell: Shell) -> None:
    usual = shell(*GIVEN, "--json")
    assert shell(*GIVEN, "--pressure-kpa", "101,325", "--temperature-c", "20", "--json") == usual
    thin = shell(*GIVEN, "--pressure-kpa", "80", "--temperature-c", "70", "--json")
    assert thin["rotor_gap_kv"] < usual["rotor_gap_kv"]
    assert thin["plug_gap_kv"] < usual["plug_gap_kv"]
    assert shell(*GIVEN, "--temperature-c", "-10", "--json")["sum_kv"] > usual["sum_kv"]


def test_a_charged_intake_leaves_the_cap_in_open_air(shell: Shell) -> None:
    usual = shell(*GIVEN, "--json")
    charged = shell(*GIVEN, "--pressure-kpa", "180", "--json")
    assert set(charged) == set(usual)
    assert charged["rotor_gap_kv"] == usual["rotor_gap_kv"]
    assert charged["plug_gap_kv"] > usual["plug_gap_kv"]
    assert any("the cap is taken to stand in open air" in said for said in charged["warnings"])
    assert not any("open air at" in said for said in usual["warnings"])
    shell(*GIVEN, "--pressure-kpa", "180")
    assert "the cap is taken to stand in open air" in shell.out


def test_a_person_gets_sentences_with_the_cautions(shell: Shell) -> None:
    shell(*GIVEN)
    assert shell.status == 0
    for said in (
        "With a full cylinder the coil must reach",
        "not a specification",
        "injure or kill",
    ):
        assert said in shell.out


def test_outside_the_formula_is_no_refusal(shell: Shell) -> None:
    words = ("spark", "--rotor-gap-mm", "0", "--plug-gap-mm", "1.1", "--compression-ratio", "9.5")
    said = shell(*words, "--json")
    assert shell.status == 0
    assert (said["valid"], said["rotor_gap_kv"], said["sum_kv"]) == (False, None, None)


@pytest.mark.parametrize("flag", ["--rotor-gap-mm", "--plug-gap-mm", "--compression-ratio"])
@pytest.mark.parametrize("word", ["nan", "inf", "-1", "1e9", "wide", "", "1_0"])
def test_what_is_no_such_number_is_refused(shell: Shell, flag: str, word: str) -> None:
    words = [*GIVEN, f"{flag}={word}"]
    assert flag in shell.refused(*words)


@pytest.mark.parametrize("left_out", [1, 3, 5])
def test_what_is_missing_is_named(shell: Shell, left_out: int) -> None:
    assert GIVEN[left_out] in shell.refused(*GIVEN[:left_out], *GIVEN[left_out + 2 :])


def test_a_pair_before_and_after(shell: Shell, place: str) -> None:
    words = ("spark", "--pair", "J-104", "1", "--shop", place, "--compression-ratio", "9")
    said = shell(*words, "--json")
    assert set(said) == {"before", "after", "ranges", "taken"}
    by_hand = shell(
        *("spark", "--rotor-gap-mm", "1.48", "--plug-gap-mm", "1.3"),
        *("--compression-ratio", "9", "--json"),
    )
    assert said["before"]["sum_kv"] == pytest.approx(by_hand["sum_kv"])
    assert said["after"]["rotor_gap_kv"] < said["before"]["rotor_gap_kv"]
    assert said["after"]["plug_gap_kv"] < said["before"]["plug_gap_kv"]
    low, high = said["ranges"]["before"]["sum_kv"]
    assert low < said["before"]["sum_kv"] < high
    assert any("pair 2 less tip radius of pair 1" in words for words in said["taken"])
    shell(*words)
    assert "The old parts asked the coil for about" in shell.out


@pytest.mark.parametrize("number", ["2", "3"])
def test_cap_and_plug_tell_the_same_story(shell: Shell, place: str, number: str) -> None:
    words = ("--shop", place, "--compression-ratio", "9", "--json")
    one = shell("spark", "--pair", "J-104", "1", *words)
    assert shell("spark", "--pair", "J-104", number, *words) == one


def test_a_part_that_was_not_fitted_counts_only_where_it_is_asked_for(
    shell: Shell, tmp_path: Path
) -> None:
    record = new_place(tmp_path / "stopped")
    job = a_rotor(record).job
    read(record, job, "distributor-cap", "terminal-radius", "34.90", "34.88")
    read(record, job, "spark-plug", "gap", "1.60", "1.20")
    read(record, job, "spark-plug", "gap", "1.30", "1.05")
    with record.reading() as connection:
        stopped = pairs_of_job(connection, job)[2]
    actions.say_fitted(record, stopped, fitted=False)
    record.close()
    more = ("--shop", str(tmp_path / "stopped"), "--compression-ratio", "9", "--json")
    of_rotor = shell("spark", "--pair", "J-104", "1", *more)
    assert any("gap readings of pair 4" in words for words in of_rotor["taken"])
    of_stopped = shell("spark", "--pair", "J-104", "3", *more)
    assert any("gap readings of pair 3" in words for words in of_stopped["taken"])


def test_flags_stand_in_for_what_was_not_read(shell: Shell, rotor_place: str) -> None:
    words = ("spark", "--pair", "J-104", "1", "--shop", rotor_place, "--compression-ratio", "9")
    assert "--rotor-gap-mm" in shell.refused(*words)
    assert "--plug-gap-mm" in shell.refused(*words, "--rotor-gap-mm", "1.5")
    said = shell(*words, "--rotor-gap-mm", "1.5", "--plug-gap-mm", "1.1", "--json")
    assert said["before"]["plug_gap_kv"] == said["after"]["plug_gap_kv"]
    assert said["after"]["rotor_gap_kv"] < said["before"]["rotor_gap_kv"]
    assert sum("as given" in words for words in said["taken"]) == 2


def of_plug(shell: Shell, folder: Path, old: str, new: str) -> list[str]:
    """Ask with a plug gap given beside a pair of plugs read so; return what was taken."""
    record = new_place(folder)
    read(record, a_rotor(record).job, "spark-plug", "gap", old, new)
    record.close()
    words = ("spark", "--pair", "J-104", "2", "--shop", str(folder), "--compression-ratio", "9")
    said = shell(*words, "--rotor-gap-mm", "1.5", "--plug-gap-mm", "1.1", "--json")
    taken: list[str] = said["taken"]
    return taken


def test_a_plug_gap_that_was_read_counts_before_one_that_is_given(
    shell: Shell, tmp_path: Path
) -> None:
    assert of_plug(shell, tmp_path / "both", "1.30", "1.05")[-1].endswith(
        "--plug-gap-mm was not used."
    )
    assert of_plug(shell, tmp_path / "old", "1.30", "")[-1].endswith(
        "The gap after: 1.1 mm as given."
    )


def test_a_rotor_without_its_tip_tells_nothing_of_before_and_after(
    shell: Shell, tmp_path: Path
) -> None:
    record = new_place(tmp_path / "shop")
    read(record, a_rotor(record).job, "distributor-rotor", "bore", "12.0", "12.0")
    record.close()
    words = ("spark", "--pair", "J-104", "2", "--shop", str(tmp_path / "shop"))
    more = ("--compression-ratio", "9", "--rotor-gap-mm", "1.5", "--plug-gap-mm", "1.1")
    assert "Pair 2 has no tip radius on both sides." in shell.refused(*words, *more)


@pytest.mark.parametrize(
    ("number", "says"),
    [("0", "1 to 4"), ("5", "1 to 4"), ("x", "1 to 4"), ("9" * 6000, "1 to 4"), ("4", "plug-wire")],
)
def test_other_pairs_are_refused(shell: Shell, place: str, number: str, says: str) -> None:
    words = ("spark", "--pair", "J-104", number, "--shop", place, "--compression-ratio", "9")
    assert says in shell.refused(*words)


def test_an_unknown_job_is_refused(shell: Shell, place: str) -> None:
    shell.refused("spark", "--pair", "J-999", "1", "--shop", place, "--compression-ratio", "9")
