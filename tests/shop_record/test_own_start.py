"""The program starts itself alike by Python and where it was built into one without Python."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.language import VARIABLE
from desktop_app.shop_record.own_program.own_start import (
    asked_module,
    module_order,
    program_order,
    start_anew,
)
from tests.fences import ROOT, imports, sources

READING = "desktop_app.part_photos.read_apart.reading_process"


@pytest.fixture
def built(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A program that was built, as it looks from inside; it is the one without a console."""
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(sys, "executable", str(tmp_path / "benchwitness-window.exe"))
    return tmp_path


def test_by_python_a_module_is_run_from_wherever_one_stands(tmp_path: Path) -> None:
    (tmp_path / "desktop_app.py").write_text("raise SystemExit('a stranger')", encoding="ascii")
    order = program_order("--version")
    environ = {**os.environ, "PYTHONPATH": str(ROOT)}
    said = subprocess.run(order, cwd=tmp_path, env=environ, capture_output=True, check=False)
    assert (said.returncode, said.stderr) == (0, b"")
    assert said.stdout.startswith(b"benchwitness")
    assert module_order(READING, "x") == [sys.executable, "-P", "-m", READING, "x"]


def test_a_built_program_starts_the_one_that_has_pipes(built: Path) -> None:
    program = str(built / "benchwitness.exe")
    assert program_order("--version") == [program, "--version"]
    order = module_order(READING, "first sheet", "--json")
    assert order[0] == program
    assert asked_module(order) == READING
    assert order == [program, "first sheet", "--json"]


@pytest.mark.parametrize("own", [[], ["--own-module", "desktop_app.__main__"]])
def test_what_is_built_is_the_program_or_a_module_of_it(own: list[str]) -> None:
    order = [sys.executable, "-P", "-m", "desktop_app.without_python", *own, "--version"]
    environ = {**os.environ, "PYTHONPATH": str(ROOT)}
    said = subprocess.run(order, env=environ, capture_output=True, check=False)
    assert (said.returncode, said.stderr) == (0, b"")
    assert said.stdout.startswith(b"benchwitness")


@pytest.mark.parametrize(
    "said", [[], ["kinds"], ["--own-module"], ["--own-module", "os"], ["demo", "--own-module", "x"]]
)
def test_what_names_no_module_of_ours_stays_as_it_was_said(said: list[str]) -> None:
    words = ["benchwitness", *said]
    assert asked_module(words) is None
    assert words == ["benchwitness", *said]


def test_nothing_else_starts_this_program_or_its_processes() -> None:
    # The last one draws the README's pictures, and is started by who works on the program.
    start = (
        "shop_record/own_program/own_start.py",
        "shop_record/own_program/own_process.py",
        "demo_shop/pictures.py",
    )
    other_ways = {"multiprocessing", "concurrent.futures.ProcessPoolExecutor", "os.fork"}
    found = [
        source.path
        for source in sources(ROOT)
        if not source.path.endswith(start)
        and (
            any(f"{word}(" in source.text for word in ("Popen", "QProcess", "os.execv"))
            or "sys.executable" in source.text
            or other_ways & {name for name, _ in imports(source.tree)}
        )
    ]
    assert found == []


def test_the_program_is_started_anew_with_the_language_that_is_chosen(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    started: list[tuple[list[str], dict[str, str]]] = []
    monkeypatch.setenv(VARIABLE, "es")
    # Where the system can't put it in place of this one, it is started beside it.
    monkeypatch.setattr(os, "execve", lambda _file, order, env: started.append((order, env)))
    monkeypatch.setattr(subprocess, "Popen", lambda order, env: started.append((order, env)))
    assert start_anew() == 0
    assert start_anew(Path("demo-shop")) == 0
    ways = 1 if os.name == "nt" else 2
    plain, with_shop = program_order(), program_order("--shop", "demo-shop")
    assert [order for order, _ in started] == [plain] * ways + [with_shop] * ways
    assert all(VARIABLE not in environment for _, environment in started)


@pytest.mark.expects_trouble_log
def test_a_program_that_cannot_be_started_anew_says_so(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def gone(*_: object) -> None:
        raise FileNotFoundError("no such program")

    monkeypatch.setattr(os, "execve", gone)
    monkeypatch.setattr(subprocess, "Popen", gone)
    assert start_anew() == 1
    assert "could not be started anew: no such program. Start it by hand." in caplog.text
