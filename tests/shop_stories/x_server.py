"""A bare X server for a program that is started and asked from outside, and xdotool on it."""

from __future__ import annotations

import os
import select
import subprocess
from collections.abc import Iterator

import pytest

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


def xdo(display: str, *words: str) -> str:
    said = subprocess.run(
        ["xdotool", *words],
        env={**os.environ, "DISPLAY": display},
        capture_output=True,
        text=True,
        check=False,
    )
    return said.stdout.strip()
