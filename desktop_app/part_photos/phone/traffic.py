"""How many come at a time, and how many photos came within the hour."""

from __future__ import annotations

import threading
from collections import Counter, deque
from collections.abc import Callable
from time import monotonic

from desktop_app.part_photos.phone import limits

_HOUR = 3600.0


class Traffic:
    """Counts connections and photos; asked by several threads. `tick` gives seconds that go on."""

    def __init__(self, tick: Callable[[], float] = monotonic) -> None:
        self._tick = tick
        self._lock = threading.Condition()
        self._here: Counter[str] = Counter()
        self._served: Counter[str] = Counter()
        self._photos: deque[float] = deque()

    def enter(self, address: str) -> bool:
        """Count a connection in; False where there are too many, of all or of this address."""
        with self._lock:
            full = self._here.total() >= limits.MOST_CONNECTIONS
            if full or self._here[address] >= limits.MOST_OF_ONE + limits.MOST_WAITING:
                return False
            self._here[address] += 1
            return True

    def turn(self, address: str, seconds: float) -> bool:
        """Wait until another one of this address may be served; False where that takes too long.

        Who waited in vain is counted out.
        """
        with self._lock:
            mine = self._lock.wait_for(lambda: self._served[address] < limits.MOST_OF_ONE, seconds)
            if mine:
                self._served[address] += 1
            else:
                self._here[address] -= 1
            return mine

    def leave(self, address: str) -> None:
        """Count a connection out that was served."""
        with self._lock:
            self._here[address] -= 1
            self._served[address] -= 1
            # Names with nobody behind them go.
            self._here, self._served = +self._here, +self._served
            self._lock.notify_all()

    def here(self) -> int:
        """Return how many connections there are."""
        with self._lock:
            return self._here.total()

    def another_photo(self) -> bool:
        """Count a photo in; False where the hour is full."""
        with self._lock:
            now = self._tick()
            while self._photos and self._photos[0] <= now - _HOUR:
                self._photos.popleft()
            if len(self._photos) >= limits.PHOTOS_AN_HOUR:
                return False
            self._photos.append(now)
            return True
