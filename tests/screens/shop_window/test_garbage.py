"""Garbage is looked for on the window's thread alone."""

from __future__ import annotations

import gc
import threading
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.garbage import WindowGarbage


@pytest.fixture(autouse=True)
def _as_it_was() -> Iterator[None]:
    yield
    gc.enable()


def tangled() -> weakref.ref[QObject]:
    """Make something that only a look for garbage ends, and tell on which thread it does."""
    thing = QObject()
    thing.itself = thing  # type: ignore[attr-defined]
    return weakref.ref(thing)


def much(kept: list[list[int]]) -> None:
    """Make so much on another thread that the interpreter would look for garbage there."""
    kept += [[number] for number in range(20_000)]


def test_what_another_thread_makes_ends_nothing_of_the_window(qtbot: QtBot) -> None:
    owner = QObject()
    WindowGarbage(owner)
    ended_on: list[int] = []
    seen = tangled()
    weakref.finalize(seen(), lambda: ended_on.append(threading.get_ident()))
    kept: list[list[int]] = []
    other = threading.Thread(target=much, args=(kept,))
    other.start()
    other.join()
    assert seen() is not None
    qtbot.waitUntil(lambda: seen() is None, timeout=20_000)
    assert ended_on == [threading.get_ident()]
    owner.deleteLater()


def test_nobody_else_looks_for_garbage(qtbot: QtBot) -> None:
    owner = QObject()
    WindowGarbage(owner)
    assert not gc.isenabled()
    owner.deleteLater()
