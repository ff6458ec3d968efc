"""The program on a real X server, driven from outside like a person would."""

from __future__ import annotations

import os
import select
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place, open_place
from desktop_app.repair_jobs.stored_reading import read_job

ROOT = Path(__file__).resolve().parents[2]
PATIENCE = 40.0  # seconds for the slowest step on a busy machine


@pytest.fixture
def display() -> Iterator[str]:
    """Start an X server on a free display and stop it afterwards."""
    reading, writing = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1366x900x24", "-nolisten", "tcp"],
        pass_fds=[writing],
        stderr=subprocess.DEVNULL,
    )
    os.close(writing)
    try:
        ready, _, _ = select.select([reading], [], [], PATIENCE)
        assert ready, "the X server did not come up"
        yield f":{os.read(reading, 16).decode().strip()}"
    finally:
        os.close(reading)
        server.terminate()
        server.wait(timeout=PATIENCE)


def until(asked: Callable[[], object], what: str) -> object:
    """Ask again and again until there is an answer."""
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        answer = asked()
        if answer:
            return answer
        time.sleep(0.1)
    raise AssertionError(f"waited in vain for {what}")


def xdo(display: str, *words: str) -> str:
    said = subprocess.run(
        ["xdotool", *words],
        env={**os.environ, "DISPLAY": display},
        capture_output=True,
        text=True,
        check=False,
    )
    return said.stdout.strip()


def picture(display: str, file: Path) -> None:
    """Keep a picture of the screen where a program is there that takes one."""
    if tool := shutil.which("import"):
        command = [tool, "-display", display, "-window", "root", str(file)]
        subprocess.run(command, check=True, timeout=PATIENCE)
        assert file.stat().st_size > 1000


def jobs(shop: Path) -> int:
    from sqlalchemy import text

    record = open_place(shop)
    try:
        with record.reading() as connection:
            return int(connection.execute(text("SELECT count(*) FROM job")).scalar_one())
    finally:
        record.close()


@pytest.mark.needs_tool("Xvfb", "xdotool")
def test_a_car_is_taken_in_on_a_real_screen(display: str, tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    new_place(shop, lambda: datetime(2026, 3, 2, tzinfo=UTC)).close()
    program = subprocess.Popen(
        [sys.executable, "-m", "desktop_app", "--shop", str(shop)],
        cwd=ROOT,
        env={**os.environ, "DISPLAY": display, "QT_QPA_PLATFORM": "xcb", "LANG": "C.UTF-8"},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
    )
    try:
        window = str(
            until(
                lambda: xdo(display, "search", "--onlyvisible", "--name", "Benchwitness"),
                "the window",
            )
        ).split()[0]
        xdo(display, "windowfocus", "--sync", window)
        # The title carries the shop's name once the shop is open.
        until(lambda: "Our shop" in xdo(display, "getwindowname", window), "the shop to open")

        xdo(display, "key", "--clearmodifiers", "ctrl+n")
        for word in ("TH 1042", "Tab", "Tab", "Tab", "118420", "Tab", "Tab", "Tab"):
            xdo(display, *(("key", word) if word == "Tab" else ("type", word)))
        xdo(display, "type", "misses when damp")
        xdo(display, "key", "Tab", "Tab", "Tab", "Tab", "space")
        until(lambda: jobs(shop) > 0, "the job in the record")
        picture(display, tmp_path / "real-screen.png")
        program.send_signal(signal.SIGTERM)
        _, said = program.communicate(timeout=PATIENCE)
        assert b"Traceback" not in said
    finally:
        program.kill()
        program.communicate()
    record = open_place(shop)
    with record.reading() as connection:
        job = read_job(connection, 1)
    record.close()
    assert "misses when damp" in job.concern
    assert job.odometer_in == 118_420
