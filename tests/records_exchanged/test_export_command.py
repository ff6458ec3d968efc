"""The command `export`, and `import` of what it wrote, as the command line runs them."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import open_place
from tests.records_exchanged.exported import files_of, fill


def command(*words: str) -> int:
    return run(words, lambda folder: 0, lambda folder, file: None)


@pytest.fixture
def shop(tmp_path: Path) -> str:
    place = tmp_path / "shop"
    assert command("new-shop", str(place)) == 0
    record = open_place(place)
    fill(record)
    record.close()
    return str(place)


def test_an_export_comes_back_into_a_new_shop(
    shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, other, again = (str(tmp_path / name) for name in ("out", "other", "again"))
    capsys.readouterr()
    assert command("export", out, "--shop", shop, "--json") == 0
    said = json.loads(capsys.readouterr().out)
    assert (said["jobs"], said["photos"], said["photos_missing"]) == (9, 4, [])
    command("new-shop", other)
    capsys.readouterr()
    for words in (["--dry-run"], []):
        assert command("import", out, "--shop", other, "--json", *words) == 0
        told = json.loads(capsys.readouterr().out)
        assert (told["read"], told["added"], told["rejected"], told["photos"]) == (9, 9, [], 4)
    assert command("export", again, "--shop", other) == 0
    assert files_of(Path(again)) == files_of(Path(out))
    assert "README.txt says what is what" in capsys.readouterr().out
    looked = [command("check", "--shop", place) for place in (shop, other)]
    assert looked[0] == looked[1]  # what is doubted in the one is doubted in the other
    capsys.readouterr()
    assert command("find", "misfires when cold", "--shop", other, "--json") == 0
    assert "J-9" in [job["number"] for job in json.loads(capsys.readouterr().out)["jobs"]]


def test_into_a_shop_that_has_jobs_only_the_jobs_come(
    shop: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = str(tmp_path / "out")
    command("export", out, "--shop", shop)
    capsys.readouterr()
    assert command("import", out, "--shop", shop) == 0
    said = capsys.readouterr().out
    assert "0 added, 0 updated" in said
    assert "0 refused" in said
    assert said.splitlines()[-1].startswith("Only jobs.csv was read")
    assert "comebacks are counted otherwise" in said.splitlines()[-1]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("export", "."), "not empty"),
        (("import", "."), "not one that export wrote"),
        (("import", "out", "--columns", "map.toml"), "An export needs no map"),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(
    shop: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
    words: tuple[str, ...],
    says: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    command("export", "out", "--shop", shop)
    capsys.readouterr()
    assert command(*words, "--shop", shop) == 2
    said = capsys.readouterr().err
    assert says in said
    assert said.count("\n") == 1


@pytest.mark.needs_tool("sha256sum")
def test_the_checksums_are_read_by_the_usual_tool(shop: str, tmp_path: Path) -> None:
    command("export", str(tmp_path / "out"), "--shop", shop)
    words = ["sha256sum", "--check", "--strict", "--quiet", "checksums.sha256"]
    done = subprocess.run(words, cwd=tmp_path / "out", capture_output=True, check=False)
    assert (done.returncode, done.stdout, done.stderr) == (0, b"", b"")
