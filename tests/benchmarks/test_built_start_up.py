"""The built program's start against the same by Python, each started in turn with the other."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from statistics import median
from time import perf_counter

import pytest

from tests.built.building import VARIABLE, Built, built_program
from tests.shop_stories.real_screen import until
from tests.shop_stories.x_server import display, xdo

__all__ = ["display"]  # a fixture

ROUNDS = 5
# What loading a library costs is the same in both; a build has no source files to look for, and
# an archive to look into.
GOAL = 1.5
HEADROOM = 1.3  # short timings move by a third between rounds on a busy machine

pytestmark = pytest.mark.skipif(
    VARIABLE not in os.environ, reason=f"{VARIABLE} names no program that run.py build made"
)


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Built:
    """The program that was built, with a home of its own."""
    return built_program(tmp_path_factory.mktemp("home"))


def orders(built: Built, *words: str) -> tuple[list[str], list[str]]:
    """The order by Python, and that of the built program."""
    by_python = [sys.executable, "-P", "-m", "desktop_app", *words]
    return by_python, [str(built.program), *words]


def seconds(order: list[str], built: Built, **more: str) -> float:
    """How long a command takes from its start to its end."""
    began = perf_counter()
    subprocess.run(order, env=built.environ(**more), capture_output=True, check=True)
    return perf_counter() - began


def until_open(order: list[str], built: Built, display: str) -> float:
    """How long it takes till the window shows its shop."""
    asked = ("search", "--onlyvisible", "--name", ". - Benchwitness")
    began = perf_counter()
    with subprocess.Popen(order, env=built.environ(DISPLAY=display)) as program:
        until(lambda: xdo(display, *asked), "the shop to open")  # asked ten times a second
        took = perf_counter() - began
        program.kill()
    until(lambda: not xdo(display, *asked), "the window to go")
    return took


def told(what: str, pairs: list[tuple[float, float]]) -> float:
    """Say what both take; return how many times as long the built program takes."""
    python, ours = (median(one) for one in zip(*pairs, strict=True))
    ratio = median(ours / python for python, ours in pairs)
    print(
        f"\n{what}: {ours:.2f} s built, {python:.2f} s by Python, {ratio:.2f} times (goal {GOAL})"
    )
    return ratio


def test_a_command_begins_as_soon(built: Built, middling_shop: Path) -> None:
    by_python, ours = orders(built, "find", "misses when damp", "--shop", str(middling_shop))
    pairs = [(seconds(by_python, built), seconds(ours, built)) for _ in range(ROUNDS + 1)][1:]
    assert told("find", pairs) < GOAL * HEADROOM


@pytest.mark.needs_tool("Xvfb", "xdotool")
def test_the_window_opens_as_soon(built: Built, middling_shop: Path, display: str) -> None:
    by_python, ours = orders(built, "--shop", str(middling_shop))
    pairs = [
        (until_open(by_python, built, display), until_open(ours, built, display))
        for _ in range(ROUNDS + 1)
    ][1:]
    assert told("window with its shop", pairs) < GOAL * HEADROOM
