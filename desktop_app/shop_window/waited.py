"""Waiting for another computer: who stops it waits no longer, whatever that one does.

A connection that is being made can't be broken off. So it is made in a thread of its own; where
nobody wants it any more, it is let go as soon as it is there.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Generator
from typing import Generic, TypeVar

from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

T = TypeVar("T")
LOOK_S = 0.05


class Waited(Generic[T]):
    """Something that is waited for; `let_go(what came)` is called where nobody takes it."""

    def __init__(self, work: Callable[[], T], let_go: Callable[[T], object]) -> None:
        self._work, self._let_go = work, let_go
        self._lock = threading.Lock()
        self._wanted = True
        self._came: list[T] = []
        self._failed: Exception | None = None
        self._over = threading.Event()

    def steps(self, words: str) -> Generator[Step, None, Waited[T]]:
        """Wait for it, step by step; a ShopTrouble is kept for who takes it."""
        threading.Thread(target=self._run, name="waited", daemon=True).start()
        while not self._over.wait(LOOK_S):
            yield Step(0, 0, words)
        if self._failed is not None and not isinstance(self._failed, ShopTrouble):
            raise self._failed
        return self

    def take(self) -> T:
        """Return what came, once; it belongs to the caller from then on. Raises a ShopTrouble."""
        with self._lock:
            if self._failed is not None:
                raise self._failed
            return self._came.pop()

    def give_up(self) -> None:
        """Want it no longer; what came and was not taken is let go."""
        with self._lock:
            self._wanted = False
            left, self._came = self._came, []
        for one in left:
            self._let_go(one)

    def _run(self) -> None:
        try:
            came = self._work()
        except Exception as error:  # noqa: BLE001 - it is raised again for who waits
            self._failed = error
        else:
            with self._lock:
                self._came.append(came)
                wanted = self._wanted
            if not wanted:
                self.give_up()
        self._over.set()
