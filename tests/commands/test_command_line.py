"""The command line keeps its contract: one document or one line, and the right exit status."""

from __future__ import annotations

import io
import json
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from desktop_app.commands.command_line import run, say
from desktop_app.commands.command_words import add_commands
from desktop_app.commands.outcome import Outcome
from desktop_app.commands.shop_place import kinds_of, new_place, open_place
from desktop_app.parts_compared.actions import keep_instrument
from desktop_app.parts_compared.kind_actions import copy_kind
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from tests.from_outside import damage


class Shell:
    """Runs command lines and keeps what they print."""

    def __init__(self, capsys: pytest.CaptureFixture[str]) -> None:
        self._capsys = capsys
        self.opened: list[Path | None] = []
        self.status = 0
        self.out = ""
        self.err = ""

    def __call__(self, *words: str) -> Any:
        def open_window(folder: Path | None) -> int:
            self.opened.append(folder)
            return 0

        self.status = run(words, open_window, lambda _folder, picture: picture.write_bytes(b""))
        captured = self._capsys.readouterr()
        self.out, self.err = captured.out, captured.err
        return json.loads(self.out) if "--json" in words and self.status < 2 else None

    def refused(self, *words: str) -> str:
        """Run what must be refused: status 2, nothing printed, exactly one line of reason."""
        self(*words)
        assert self.status == 2
        assert self.out == ""
        assert self.err.count("\n") == 1
        return self.err


@pytest.fixture
def shell(capsys: pytest.CaptureFixture[str]) -> Shell:
    return Shell(capsys)


def take_in(record: Any, words: str, odometer: int, day: str) -> int:
    said = WriteUp(
        concern=words,
        plate="TH 1042",
        vehicle_id=None if day < "2026-04" else 1,
        odometer=odometer,
        came_at=f"{day}T08:00:00+00:00",
        symptoms=("misfire",),
    )
    made = actions.write_up(record, said).made
    assert made is not None
    return made


@pytest.fixture
def place(tmp_path: Path) -> str:
    """A shop with a car that came back after 41 days and 880 miles."""
    record = new_place(tmp_path / "shop", lambda: datetime(2026, 5, 1, 12, tzinfo=UTC))
    first = take_in(record, "misses when damp", 100_000, "2026-03-02")
    actions.choose_system(record, first, "ignition")
    actions.write_code(record, first, "P0300", "stored", "found")
    actions.name_cause(record, first, "cap crusted")
    actions.write_correction(record, first, "cap replaced")
    actions.say_proof(record, first, 2)
    actions.say_declined(record, first, "nothing")
    actions.hand_over(record, first, 100_010, left_at="2026-03-02T17:00:00+00:00")
    second = take_in(record, "misses again", 100_890, "2026-04-12")
    actions.choose_system(record, second, "ignition")
    actions.write_code(record, second, "P0300", "stored", "found")
    record.close()
    return str(tmp_path / "shop")


def test_returns_lists_the_pair_with_its_reasons(shell: Shell, place: str) -> None:
    (row,) = shell("returns", "--shop", place, "--json")
    assert (row["earlier"], row["later"]) == ("J-101", "J-102")
    assert row["days"] == 41
    assert row["distance_miles"] == pytest.approx(880)
    assert row["in_window"] is True
    assert row["decided_by"] == "time"
    assert row["window_used"] == pytest.approx(41 / 90)
    assert row["reasons"] == ["same symptom: misfire", "same system: ignition", "same code: P0300"]
    assert row["judgement"] is None
    assert row["root"] == "J-101"
    assert shell("returns", "--shop", place, "--until", "2026-04-11", "--json") == []


def test_watch_hides_what_came_later(shell: Shell, place: str) -> None:
    (job,) = shell("watch", "--shop", place, "--today", "2026-03-12", "--json")
    assert job["job"] == "J-101"
    assert job["days_left"] == 80
    assert shell("watch", "--shop", place, "--today", "2026-03-01", "--json") == []


def test_watch_says_that_the_odometer_was_not_read_since(shell: Shell, place: str) -> None:
    shell("watch", "--shop", place, "--today", "2026-03-12")
    assert "J-101" in shell.out
    assert " 80 days left; miles not read since; expected to end " in shell.out


def test_watch_says_of_a_day_gone_by_that_it_may_have_ended(shell: Shell, place: str) -> None:
    record = open_place(Path(place))
    came = "2026-03-21T08:00:00+00:00"
    actions.write_up(record, WriteUp("tyres", vehicle_id=1, came_at=came, odometer=102_500))
    record.close()
    [job] = shell("watch", "--shop", place, "--today", "2026-04-10", "--json")
    assert job["expected_close"] < "2026-04-10"
    shell("watch", "--shop", place, "--today", "2026-04-10")
    line = next(one for one in shell.out.splitlines() if one.startswith("J-101"))
    assert " days, " in line
    assert "miles left as last read;" in line
    assert f"may have ended {job['expected_close']} by distance" in line
    shell("watch", "--shop", place, "--today", "2026-03-22")
    assert "miles left as last read; expected to end 2026-" in shell.out


def test_find_says_how_it_read_the_words(shell: Shell, place: str) -> None:
    found = shell("find", "missfire P0300", "--shop", place, "--json")
    assert {job["number"] for job in found["jobs"]} == {"J-101", "J-102"}
    assert "P0300" in found["read_as"]
    assert shell("find", "J-102", "--shop", place, "--json")["jobs"][0]["number"] == "J-102"


def test_find_never_fails_on_what_is_typed(shell: Shell, place: str) -> None:
    for text in ('"', "AND OR NOT", "a/c - not cold", "won't (start", "50%", "*", ""):
        assert isinstance(shell("find", text, "--shop", place, "--json"), dict)


@pytest.mark.parametrize("words", [(), ("--json",)])
def test_an_output_with_few_letters_gets_all_of_it(
    monkeypatch: pytest.MonkeyPatch, words: tuple[str, ...]
) -> None:
    few = io.TextIOWrapper(io.BytesIO(), encoding="cp437")
    monkeypatch.setattr(sys, "stdout", few)
    spark = ("spark", "--rotor-gap-mm=1", "--plug-gap-mm=1", "--compression-ratio=9")
    facts = Outcome({"seen": "◆ ± 0.3"}, ("◆ ± 0.3", "two"))
    say(facts, as_json=bool(words))
    assert run((*spark, *words), lambda _folder: 0, lambda _folder, _picture: None) == 0
    said = few.buffer.getvalue().decode("cp437").replace("\r", "")  # type: ignore[attr-defined]
    first = '{\n "seen": "\\u25c6 \\u00b1 0.3"\n}\n{' if words else "\\u25c6 ± 0.3\ntwo\nThe rotor"
    assert said.startswith(first)


@pytest.mark.embedded
def test_without_an_output_a_command_still_does_its_work(
    shell: Shell, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "stdout", None)
    assert run(("new-shop", str(tmp_path / "mine")), lambda _: 0, lambda _a, _b: None) == 0
    assert (tmp_path / "mine" / "shop.sqlite").exists()


def test_what_is_no_text_is_refused(shell: Shell, place: str) -> None:
    for text in ("misfire \x00", "misfire \udcff"):
        assert "is not text" in shell.refused("find", text, "--shop", place)
    assert "--shop is empty" in shell.refused("check", "--shop", "")


def test_week_writes_a_workbook_and_says_its_figures(
    shell: Shell, place: str, tmp_path: Path
) -> None:
    out = tmp_path / "week.xlsx"
    shell("week", "2026-W10", "--shop", place, "--out", str(out), "--json")
    assert shell.status == 0
    assert out.read_bytes()[:2] == b"PK"
    assert "2025-W53" in shell.refused("week", "2025-W53", "--shop", place, "--out", str(out))


def test_sheet_writes_a_pdf(shell: Shell, place: str, tmp_path: Path) -> None:
    out = tmp_path / "sheet.pdf"
    shell("sheet", "j-101", "--shop", place, "--out", str(out))
    assert shell.status == 0
    assert out.read_bytes()[:5] == b"%PDF-"
    assert "J-999" in shell.refused("sheet", "J-999", "--shop", place, "--out", str(out))


def test_check_is_quiet_about_a_whole_shop_and_finds_damage(shell: Shell, place: str) -> None:
    said = shell("check", "--shop", place, "--json")
    assert said["ok"] is True
    assert shell.status == 0
    damage(Path(place), "UPDATE history SET who = 'x', body = body || ' ' WHERE seq = 1")
    said = shell("check", "--shop", place, "--json")
    assert shell.status == 1
    assert said["problems"][0]["where"] == "the history"


def test_new_shop_makes_one_and_never_in_a_full_folder(shell: Shell, tmp_path: Path) -> None:
    shell("new-shop", str(tmp_path / "mine"))
    assert shell.status == 0
    assert "not empty" in shell.refused("new-shop", str(tmp_path / "mine"))
    assert "PLACE is empty" in shell.refused("new-shop", " ")
    assert "meant as one, and no folder" in shell.refused("new-shop", "postgresql:/owner@here/shop")
    backup = str(tmp_path / "a.zip")
    shell("backup", backup, "--shop", str(tmp_path / "mine"))
    assert shell.status == 0
    refused = shell.refused("restore", backup, "postgresql+psycopg://owner@here/shop")
    assert "meant as one, and no folder" in refused


def test_compare_judges_files_in_their_order(shell: Shell, tmp_path: Path) -> None:
    names = []
    for name, new in (("a", "27.45, 27.44, 27.46"), ("b", "26.90, 26.91, 26.89")):
        file = tmp_path / f"{name}.toml"
        file.write_text(
            'kind = "distributor-rotor"\n'
            '[[readings]]\nside = "removed"\ndimension = "tip-radius"\n'
            'instrument = "calliper"\nvalues = [26.90, 26.91, 26.89]\n'
            '[[readings]]\nside = "replacement"\ndimension = "tip-radius"\n'
            f'instrument = "calliper"\nvalues = [{new}]\n',
            "utf-8",
        )
        names.append(str(file))
    first, second = shell("compare", *names, "--json")
    by_name = {d["name"]: d for d in first["dimensions"]}
    assert by_name["tip-radius"]["verdict"] == "restored"
    assert by_name["tip-radius"]["difference"] == pytest.approx(0.55)
    assert by_name["bore"]["verdict"] == "not measured"
    assert first["verdict"] == "not enough measured"
    assert {d["name"]: d["verdict"] for d in second["dimensions"]}["tip-radius"] == "not restored"


def test_a_named_shop_adds_its_own_kinds_and_instruments(
    shell: Shell, place: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    record = open_place(Path(place))
    copy_kind(record, kinds_of()["distributor-rotor"], "Boat rotor", ())
    keep_instrument(record, "blue calliper", "mm", 0.02, 0.05)
    record.close()
    file = tmp_path / "pair.toml"
    file.write_text(
        'kind = "boat-rotor"\n'
        '[[readings]]\nside = "removed"\ndimension = "tip-radius"\n'
        'instrument = "blue calliper"\nvalues = [26.90]\n',
        "utf-8",
    )
    assert shell("kinds", "boat-rotor", "--shop", place, "--json")["name"] == "Boat rotor"
    read = shell("compare", str(file), "--shop", place, "--json")
    assert read["kind"] == "boat-rotor"
    by_name = {one["name"]: one for one in read["dimensions"]}
    assert by_name["tip-radius"]["removed"]["value"] == pytest.approx(26.90)
    # A shop that was not named is not asked.
    monkeypatch.setenv("BENCHWITNESS_SHOP", place)
    assert "boat-rotor" in shell.refused("kinds", "boat-rotor")
    assert "boat-rotor" in shell.refused("compare", str(file))
    assert shell.refused("kinds", "--shop", str(tmp_path / "nowhere"))


def test_compare_refuses_a_part_that_no_pair_has(shell: Shell, tmp_path: Path) -> None:
    file = tmp_path / "pair.toml"
    file.write_text('kind = "distributor-cap"\n[old]\ntowers = 4\n', "utf-8")
    said = shell.refused("compare", str(file))
    assert "field 'old'" in said
    assert "readings" in said


def test_kinds_and_codes_and_vins(shell: Shell) -> None:
    assert "distributor-rotor" in [k["kind"] for k in shell("kinds", "--json")]
    kind = shell("kinds", "distributor-rotor", "--json")
    assert {
        "name",
        "unit",
        "role",
        "allowed",
        "direction",
        "instrument",
        "essential",
        "basis",
    } <= set(kind["dimensions"][0])
    assert shell("code", "P0300", "--json")["area"] == "powertrain"
    assert [c["code"] for c in shell("code", "P0300", "C0035", "--json")] == ["P0300", "C0035"]
    assert shell("vin", "1M8GDM9AXKP042788", "--json")["check_digit_ok"] is True
    wrong = shell("vin", "1M8GDM9A1KP042788", "--json")
    assert wrong["check_digit_ok"] is False
    assert shell.status == 0


@pytest.mark.parametrize(
    "words",
    [
        ("vin", "123"),
        ("code", "P03000"),
        ("kinds", "flux-capacitor"),
        ("compare", "missing.toml"),
        ("returns", "--shop", "nowhere"),
        ("watch",),
        ("find",),
        ("rates",),
        ("returns", "--since", "yesterday"),
        ("returns", "--since", "2026-W01-1"),
        ("compare", "/dev/zero"),
        ("compare", "."),
        ("returns", "--since", "2026-07-02", "--until", "2026-07-01"),
        ("check", "--shop", "postgresql+psycopg://there/shop"),
    ],
)
def test_bad_input_is_one_line_and_status_two(shell: Shell, words: tuple[str, ...]) -> None:
    assert shell.refused(*words)


class Words:
    """Takes down what each command takes: its arguments, and the options with a value."""

    def __init__(self) -> None:
        self.taken: dict[str, tuple[list[str], list[str]]] = {}

    def __call__(self, name: str, _says: str, *, shop: bool = False) -> Any:
        needed: list[str] = []
        options = ["--shop"] if shop else []
        self.taken[name] = (needed, options)

        class One:
            def add_argument(self, said: str, **_facts: Any) -> None:
                (options if said.startswith("--") else needed).append(said)

        return One()


def options_with_values() -> list[tuple[str, str]]:
    """Each command with each of its options that take a value."""
    words = Words()
    add_commands(words)
    return [(name, option) for name, (_, options) in words.taken.items() for option in options]


@pytest.mark.parametrize(("command", "option"), options_with_values())
def test_two_dashes_are_no_value_of_any_option(
    shell: Shell, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, command: str, option: str
) -> None:
    monkeypatch.chdir(tmp_path)
    words = Words()
    add_commands(words)
    needed, options = words.taken[command]
    given = ["--by=system"] if option != "--by" and "--by" in options else []
    given += ["--paper=a4"] if option != "--paper" and "--paper" in options else []
    places = {"--out": "--out=out.pdf", "--layout": "--layout=card.json"}
    given += [text for name, text in places.items() if name in options and name != option]
    line = shell.refused(command, *("x" for _ in needed), *given, f"{option}=--")
    assert option in line
    assert list(tmp_path.iterdir()) == []


def test_two_dashes_are_no_shop(shell: Shell) -> None:
    assert "--shop" in shell.refused("--shop=--", "check")
    assert "--shop" in shell.refused("--shop=--")


def test_a_shop_is_taken_from_the_environment(
    shell: Shell, place: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("BENCHWITNESS_SHOP", place)
    assert len(shell("returns", "--json")) == 1


def test_no_command_opens_the_window(shell: Shell, place: str) -> None:
    shell()
    shell("--shop", place)
    assert shell.opened == [None, Path(place)]
