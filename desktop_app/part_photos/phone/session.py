"""What window and server share while the page is open; each may ask and tell it at any time."""

from __future__ import annotations

import secrets
import threading
from collections.abc import Callable
from time import monotonic

from desktop_app.language import tr
from desktop_app.part_photos.phone import limits
from desktop_app.part_photos.phone.offer import SIDES, Offer, Place, read_place
from desktop_app.part_photos.phone.traffic import Traffic

MOST_REFUSED = 50  # of which the phone is still told


class Session:
    """One time that the page is open: its key of 128 bits, the offers, what came and what was not.

    `came` is told, in the server's thread, the name that a photo has in the tray.
    """

    def __init__(self, came: Callable[[str], None], tick: Callable[[], float] = monotonic) -> None:
        self.key = secrets.token_hex(16)
        self.traffic = Traffic(tick)
        self._tick = tick
        self._came = came
        self._lock = threading.Lock()
        self._offers: dict[str, Offer] = {}
        self._now: Offer | None = None
        self._refused: dict[str, str] = {}
        self._arrived: set[str] = set()
        self._turned_away = 0
        self._used = tick()

    def offer(self, offer: Offer | None) -> None:
        """Say what photos are taken for from now on; earlier offers still take what was meant."""
        with self._lock:
            self._now = offer
            if offer is not None:
                self._offers[offer.key] = offer

    def end(self) -> None:
        """Let nobody in any more, whatever key they have."""
        with self._lock:
            self.key = ""

    def used(self) -> None:
        """Note that somebody uses the page."""
        with self._lock:
            self._used = self._tick()

    def seconds_left(self) -> float:
        """Return how long the page stays open if nobody uses it."""
        with self._lock:
            return max(0.0, self._used + limits.IDLE_SECONDS - self._tick())

    def turn_away(self) -> None:
        """Count somebody without the key."""
        with self._lock:
            self._turned_away += 1

    def counts(self) -> tuple[int, int]:
        """Return how many photos came, doubles once, and how many requests lacked the key."""
        with self._lock:
            return len(self._arrived), self._turned_away

    def refuse(self, sha256: str, why: str) -> None:
        """Tell the phone, when it asks next, that a photo that came was no usable one."""
        with self._lock:
            self._refused[sha256] = why
            self._arrived.discard(sha256)
            while len(self._refused) > MOST_REFUSED:
                self._refused.pop(next(iter(self._refused)))

    def arrived(self, sha256: str, name: str) -> None:
        """Pass on that a photo is safely in the tray."""
        with self._lock:
            self._arrived.add(sha256)
            self._refused.pop(sha256, None)
            self._used = self._tick()
        self._came(name)

    def meant(self, text: str) -> tuple[Place, Offer] | None:
        """Return the place that a phone names; None where this session never offered it."""
        place = read_place(text)
        with self._lock:
            offer = self._offers.get(place.key) if place else None
        if place is None or offer is None or place.view >= len(offer.views):
            return None
        return place, offer

    def label(self) -> dict[str, object]:
        """Return all that a phone with the key may know."""
        with self._lock:
            now, refused = self._now, dict(self._refused)
        said: dict[str, object] = {"key": "", "refused": refused}
        if now is not None:
            said |= {"key": now.key, "job": now.job, "part": now.part}
            said["views"] = [tr(view) for view in now.views]
            said |= {"side": SIDES.index(now.side), "view": now.views.index(now.view)}
        return said | {"minutes": int(self.seconds_left() // 60) + 1}
