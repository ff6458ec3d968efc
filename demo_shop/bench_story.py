"""Lays the parts of a written job side by side: photos, readings, conditions, explanations."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from typing import Any
from zlib import crc32

from demo_shop.darkroom import Darkroom, PhotoOrder, pair_view
from demo_shop.job_story import JobStory, Measured, PairStory
from demo_shop.marked_photos import mark_on_card
from demo_shop.storyteller import Storyteller
from demo_shop.tried_out import keep_sums
from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.stored_reading import photo_ids_by_hash
from desktop_app.parts_compared import actions as parts
from desktop_app.parts_compared.reading import SIDES, Side


def photo_orders(story: JobStory, bench: datetime, seed: int) -> Iterator[tuple[int, PhotoOrder]]:
    """Give each photo of a job's pairs with the place of its pair; taken from `bench` on."""
    minutes = 0
    for place, pair in enumerate(story.pairs):
        for view in pair.views:
            for side in SIDES:
                minutes += 2
                name = f"{seed}/{story.key}/{place}/{view}/{side}"
                sizes = pair.old if side == "removed" else pair.new
                taken_at = bench + timedelta(minutes=minutes)
                seen = (pair.kind, side, view, _number(name), taken_at, sizes)
                yield place, PhotoOrder(*seen, on_card=view in pair.on_card)


class BenchStory:
    """Tells what happened on the bench; without a darkroom no photos are taken."""

    def __init__(self, teller: Storyteller, darkroom: Darkroom | None, seed: int) -> None:
        self._teller, self._darkroom, self._seed = teller, darkroom, seed

    def tell(self, story: JobStory, bench: datetime) -> Iterator[None]:
        """Lay out each pair of a job; yields after each photo that was put to it."""
        who, job = story.technician, self._teller.jobs[story.key]
        orders = list(photo_orders(story, bench, self._seed)) if self._darkroom else []
        for place, pair in enumerate(story.pairs):
            laid = self._do(who, parts.lay_side_by_side, job, pair.kind, pair.position).made
            assert laid is not None
            for number, order in enumerate(one for at, one in orders if at == place):
                self._photograph(job, laid, order, f"{pair.kind}-{place + 1}-{number + 1}", who)
                yield
            self._written(who, laid, pair)
            for measured in pair.measured:
                self._measured(who, laid, pair.kind, measured)
        keep_sums(self._teller, story.key, who)

    def _photograph(self, job: int, pair: int, order: PhotoOrder, name: str, who: str) -> None:
        assert self._darkroom is not None
        record = self._teller.record
        content = self._darkroom.photo(order)
        arrival = Arrival(f"{name}-{order.side}.jpg", content=content)
        taken = take_in(record, arrival)
        self._do(who, add_photos, job, [taken])
        with record.reading() as connection:
            photo = photo_ids_by_hash(connection, job)[taken.sha256]
        view = pair_view(self._teller.kinds[order.kind], order.view)
        self._do(who, parts.show_in_pair, pair, [photo], order.side, view)
        if order.on_card:
            mark_on_card(self._teller, who, photo, order, content)

    def _written(self, who: str, laid: int, pair: PairStory) -> None:
        texts = {
            "supplier": pair.supplier,
            "lot": pair.lot,
            "number_removed": pair.number_removed,
            "number_on_box": pair.number_on_box,
            "number_on_part": pair.number_on_part,
            "note_removed": pair.note_old,
            "note_replacement": pair.note_new,
            "fate": pair.fate,
        }
        for field, words in texts.items():
            if words:
                self._do(who, parts.write_about_pair, laid, field, words)
        if pair.origin:
            self._do(who, parts.say_origin, laid, pair.origin)
        for term in pair.seen_old:
            self._do(who, parts.see_condition, laid, "removed", term, seen=True)
        for term in pair.seen_new:
            self._do(who, parts.see_condition, laid, "replacement", term, seen=True)
        for dimension, low, high, source in pair.limits:
            self._do(who, parts.enter_limits, laid, dimension, low, high, source)
        for dimension, why, by_whom in pair.explained:
            self._do(who, parts.explain_difference, laid, dimension, why, by_whom)
        if not pair.fitted:
            self._do(who, parts.say_fitted, laid, fitted=False)

    def _measured(self, who: str, laid: int, kind: str, measured: Measured) -> None:
        first = measured.first
        if first is not None:
            before = Measured(measured.dimension, first[0], first[1], first[2])
            self._measured(who, laid, kind, before)
        dimension = self._teller.kinds[kind].dimension(measured.dimension)
        assert dimension is not None
        sides: tuple[tuple[Side, str], ...] = (
            ("removed", measured.removed),
            ("replacement", measured.replacement),
        )
        for side, text in sides:
            if text:
                about = (laid, dimension, side, text, measured.instrument)
                self._do(who, parts.write_readings, *about)

    def _do(self, who: str, deed: Callable[..., Any], *words: Any, **more: Any) -> Any:
        return self._teller.do(who, deed, *words, **more)


def _number(name: str) -> int:
    return crc32(name.encode())
