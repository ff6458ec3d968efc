"""The demo command without a screen: it says so and does the same job in three files."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from demo_shop import build
from desktop_app.commands.demo import fill
from desktop_app.commands.shop_place import open_place
from desktop_app.repair_jobs.actions import add_person
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.shop_record.step import Step

ROOT = Path(__file__).resolve().parents[2]
MAGIC = {"comparison-sheet.pdf": b"%PDF-", "week.xlsx": b"PK", "window.png": b"\x89PNG"}


def demo(folder: Path) -> subprocess.CompletedProcess[str]:
    """Run the command as a newcomer would, on a computer without a screen."""
    hidden = {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}
    return subprocess.run(
        [sys.executable, "-m", "desktop_app", "demo", str(folder)],
        cwd=ROOT,
        env={name: value for name, value in os.environ.items() if name not in hidden},
        capture_output=True,
        text=True,
        check=False,
    )


def test_the_demo_without_a_screen_and_again(tmp_path: Path) -> None:
    folder = tmp_path / "demo"
    first = demo(folder)
    assert first.returncode == 0, first.stderr
    assert "no screen" in first.stdout
    for name, magic in MAGIC.items():
        assert str(folder / name) in first.stdout
        assert (folder / name).read_bytes().startswith(magic)
    # Running it again never destroys what the user changed.
    record = open_place(folder, lambda: datetime(2026, 11, 16, tzinfo=UTC))
    add_person(record, "Somebody new")
    record.close()
    assert demo(folder).returncode == 0
    record = open_place(folder)
    with record.reading() as connection:
        assert "Somebody new" in [name for _, name in people_here(connection)]
    record.close()


def test_an_empty_folder_is_filled_and_what_a_killed_maker_left_goes(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def small(beside: Path, _now: datetime) -> Iterator[Step]:
        beside.mkdir()
        for name in ("shop.sqlite", "demo-shop.toml"):
            (beside / name).write_text("made")
        yield Step(1, 1, "Made")

    monkeypatch.setattr(build, "build_demo", small)
    killed, at_work = (tmp_path / f".demo.being-made-{number}" for number in (1, 2))
    for left in (killed, at_work, tmp_path / "demo"):
        left.mkdir()
    os.utime(killed, (1_600_000_000, 1_600_000_000))
    fill(tmp_path / "demo")
    assert {path.name for path in tmp_path.iterdir()} == {"demo", at_work.name}
    assert (tmp_path / "demo" / "shop.sqlite").read_text() == "made"


def test_a_folder_of_somebody_else_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "mine.txt").write_text("mine")
    said = demo(tmp_path)
    assert said.returncode == 2
    assert said.stderr.count("\n") == 1
    assert "neither empty nor a demo shop" in said.stderr
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]
