"""The errand that takes a drop in: file after file, with progress and a way to stop."""

from __future__ import annotations

from collections.abc import Generator, Sequence
from dataclasses import dataclass

from PySide6.QtGui import QImage

from desktop_app.language import tr
from desktop_app.part_photos.actions import take_in
from desktop_app.part_photos.arrival import Arrival, spread_out
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.screen.dropped import as_png
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class BroughtIn:
    """The photos of one drop, safely on disk, and what was refused; no row names them yet."""

    job_id: int
    taken: tuple[PhotoTaken, ...]
    refused: tuple[ShopTrouble, ...]


def bring_in(
    record: ShopRecord,
    job_id: int,
    arrivals: Sequence[Arrival | tuple[str, QImage]],
    refused: Sequence[ShopTrouble],
) -> Generator[Step, None, BroughtIn]:
    """Take in what came, one after the other, so that a bad file stops no good one."""
    yield Step(0, 0, tr("Looking at what came"))
    whole = [each if isinstance(each, Arrival) else as_png(*each) for each in arrivals]
    pieces, aside = spread_out(whole)
    troubles: list[ShopTrouble] = [*refused, *aside]
    taken: list[PhotoTaken] = []
    for done, piece in enumerate(pieces):
        yield Step(done, len(pieces), tr("Taking in {name}", name=piece.name))
        try:
            taken.append(take_in(record, piece))
        except ShopTrouble as trouble:
            troubles.append(trouble)
    return BroughtIn(job_id, tuple(taken), tuple(troubles))
