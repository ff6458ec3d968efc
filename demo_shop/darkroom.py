"""Photos of the demo's pairs, drawn by two helpers beside the story so that it need not wait."""

from __future__ import annotations

import multiprocessing
import os
from collections.abc import Mapping
from concurrent.futures import BrokenExecutor, Future, ProcessPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime
from types import TracebackType

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import Side

HELPERS = 2


@dataclass(frozen=True, slots=True)
class PhotoOrder:
    """One photo to draw; `view` is a word of the camera's view, `sizes` are in mm.

    With `on_card` the part lies on a bench card.
    """

    kind: str
    side: Side
    view: str
    seed: int
    taken_at: datetime
    sizes: Mapping[str, float] = field(default_factory=dict)
    on_card: bool = False


def draw(order: PhotoOrder) -> bytes:
    """Return the photo as a JPEG file; the same order gives the same bytes."""
    from demo_shop.bench_camera.card_photo import photograph_on_card
    from demo_shop.bench_camera.photographer import photograph, views

    if order.on_card:
        seen = (order.kind, order.side, order.view, order.sizes)
        return photograph_on_card(*seen, seed=order.seed, taken_at=order.taken_at).jpeg
    fitting = [view for view in views(order.kind) if order.view in view]
    view = fitting[0] if fitting else views(order.kind)[0]
    return photograph(
        order.kind, order.side, view, order.sizes, seed=order.seed, taken_at=order.taken_at
    ).jpeg


def pair_view(kind: PartKind, view: str) -> str:
    """Return the view of the part kind that goes with a word of the camera's view."""
    beginning = view[:3]
    return next((one for one in kind.views if beginning in one), kind.views[0])


class Darkroom:
    """Takes orders and hands photos out; leaving it stops what is still waiting."""

    def __init__(self, helpers: int = HELPERS) -> None:
        spawn = multiprocessing.get_context("spawn")
        self._pool = ProcessPoolExecutor(helpers, spawn, _one_thread_each) if helpers else None
        self._drawing: dict[int, Future[bytes]] = {}

    def __enter__(self) -> Darkroom:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        if self._pool is not None:
            self._pool.shutdown(wait=True, cancel_futures=True)

    def take(self, order: PhotoOrder) -> None:
        """Begin to draw; orders are known by their seed."""
        if self._pool is not None:
            with suppress(BrokenExecutor):
                self._drawing[order.seed] = self._pool.submit(draw, order)

    def photo(self, order: PhotoOrder) -> bytes:
        """Return a photo, waiting for it where it isn't done yet.

        Where helper processes can't run (no such right, no main file), it is drawn here.
        """
        waiting = self._drawing.pop(order.seed, None)
        if waiting is None:
            return draw(order)
        try:
            return waiting.result()
        except BrokenExecutor:
            return draw(order)


def _one_thread_each() -> None:
    """Keep two helpers on two cores from fighting; it must be said before NumPy is loaded."""
    for name in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"):
        os.environ[name] = "1"
