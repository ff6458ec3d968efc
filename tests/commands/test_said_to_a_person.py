"""What commands say to a person: what was found in lines, what is refused in one, what to do."""

# ruff: noqa: F811 - the fixtures of the command line
from __future__ import annotations

from pathlib import Path

import pytest

from tests.commands.test_command_line import Shell, place, shell  # noqa: F401


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("find", "stalls", "--limit", "0"), "Accepted: 1 to 1000."),
        (("find", "stalls", "--limit", "1001"), "Accepted: 1 to 1000."),
        (("new-shop", "~nobody-at-all/shop"), "Nobody here has the home folder ~nobody-at-all."),
        (("barcodes", " "), "A file's name is empty."),
        (("compare", "pair.toml", ""), "A file's name is empty."),
        (("backup", ""), "FILE is empty."),
        (("import", ""), "FILE is empty."),
        (("import", "jobs.csv", "--columns", ""), "--columns is empty."),
        (("restore", "", "shop"), "FILE is empty."),
        (("check", "--anchor", "0:0000000000000000"), "is no anchor. Accepted: a number"),
        (("vin", "1"), "“1” has 1 character."),
        (("vin", "12"), "“12” has 2 characters."),
    ],
)
def test_a_refusal_says_what_is_accepted(shell: Shell, words: tuple[str, ...], says: str) -> None:
    assert says in shell.refused(*words)


def test_a_refusal_is_short_and_turns_no_letter_round(shell: Shell) -> None:
    said = shell.refused("kinds", "\u202e" + "x" * 100_000)
    assert said.startswith("There is no part kind '\\u202exxxx")
    assert len(said) < 2_000


def test_an_export_goes_to_no_address_and_to_nobody(
    shell: Shell, place: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    before = sorted(tmp_path.iterdir())
    said = shell.refused("export", "postgresql+psycopg://u:secret@h/y", "--shop", place)
    assert "is an address, or meant as one, and no folder" in said
    assert "secret" not in said
    said = shell.refused("export", "~nobody-at-all/x", "--shop", place)
    assert "Nobody here has the home folder ~nobody-at-all." in said
    assert sorted(tmp_path.iterdir()) == before


def test_find_says_to_a_person_what_is_about_it_and_what_is_not(shell: Shell, place: str) -> None:
    shell("find", "misses when damp", "--shop", place)
    assert "J-101  misses when damp  (words: misses, damp; " in shell.out
    assert "No past job is about that." not in shell.out
    shell("find", "zebra", "--shop", place)
    assert shell.out == "Read as: zebra\nNo past job is about that.\n"
    shell("find", "odd trim around the crusted mirror cover", "--shop", place)
    assert "No past job is about that.\nOnly a word or two in common:\nJ-101" in shell.out


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b'kind = "caf\xe9"', "is not a UTF-8 text file"),
        (b"#" * 1_000_001, "is larger than 1 MB"),
    ],
)
def test_compare_refuses_what_is_no_small_text(
    shell: Shell, tmp_path: Path, content: bytes, says: str
) -> None:
    file = tmp_path / "pair.toml"
    file.write_bytes(content)
    assert says in shell.refused("compare", str(file))
