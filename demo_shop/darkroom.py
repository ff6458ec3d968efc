"""Photos of the demo's pairs, drawn by two helpers beside the story so that it need not wait."""

from __future__ import annotations

import pickle
import subprocess
import threading
from collections.abc import Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime
from types import TracebackType

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import Side
from desktop_app.shop_record.own_program.own_process import own_process

HELPERS = 2
_DRAWING = "demo_shop.drawing_process"


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
        self._pool = ThreadPoolExecutor(helpers) if helpers else None
        self._drawing: dict[int, Future[bytes | None]] = {}
        self._mine = threading.local()
        self._started: list[subprocess.Popen[bytes]] = []

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
        for process in self._started:
            with process, suppress(OSError):
                process.kill()

    def take(self, order: PhotoOrder) -> None:
        """Begin to draw; orders are known by their seed."""
        if self._pool is not None:
            self._drawing[order.seed] = self._pool.submit(self._drawn_beside, order)

    def photo(self, order: PhotoOrder) -> bytes:
        """Return a photo, waiting for it where it isn't done yet.

        Where helper processes can't run or come to nothing, it is drawn here.
        """
        waiting = self._drawing.pop(order.seed, None)
        drawn = waiting.result() if waiting is not None else None
        return draw(order) if drawn is None else drawn

    def _drawn_beside(self, order: PhotoOrder) -> bytes | None:
        """Have a photo drawn by the process of this thread; None where it has come to nothing."""
        try:
            process = self._process()
            assert process.stdin is not None
            assert process.stdout is not None
            pickle.dump(order, process.stdin)
            process.stdin.flush()
            drawn: bytes = pickle.load(process.stdout)
        except (OSError, EOFError, pickle.UnpicklingError):
            return None
        return drawn

    def _process(self) -> subprocess.Popen[bytes]:
        if not hasattr(self._mine, "process"):
            self._mine.process = own_process(_DRAWING, stdin=subprocess.PIPE)
            self._started.append(self._mine.process)
        process: subprocess.Popen[bytes] = self._mine.process
        return process
