"""A rotor with a photo of each side and marks on them, for tests of readings from photos."""

from __future__ import annotations

import json
import math
from dataclasses import dataclass

import numpy as np

from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.stored import Mark, Overlay, PhotoScale, PrintedCard
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.photo_reading_actions import take_reading_from_mark
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, picture
from tests.parts_compared.sheet_story import TOP, RotorStory, a_rotor, kinds

BUDGET = {"pointing": 0.08, "scale": 0.02, "height": 0.03, "print": 0.004}
#: A camera 312 mm above the card: 500 pixels of focal length, no lens errors, nothing in doubt.
STRAIGHT_DOWN = CardScale(
    theta=np.array([math.log(500.0), 320.0, 240.0, 0, 0, 0, 0, 0, -100.0, -100.0, 312.0]),
    covariance=np.zeros((11, 11)),
    print_u=0.0003,
    tilt_deg=0.0,
    distance_mm=312.0,
    mm_per_px=312 / 500,
    middle_mm=(100.0, 100.0),
    card="a4",
    markers_seen=(0, 1, 2),
    residual_px=0.1,
    blur_px=0.8,
)


def known(name: str) -> Dimension:
    """A dimension of the rotor."""
    found = kinds()["distributor-rotor"].dimension(name)
    assert found is not None
    return found


@dataclass(frozen=True, slots=True)
class PhotoStory:
    """The rotor's pair, and the photo of each side with the scale of one printed card."""

    rotor: RotorStory
    photos: dict[Side, int]

    @property
    def record(self) -> ShopRecord:
        """The shop's record."""
        return self.rotor.record

    def pair(self) -> PairView:
        """The pair as it is kept now."""
        with self.record.reading() as connection:
            return read_pair(connection, self.rotor.pair)

    def mark(self, side: Side, value: object, **changed: object) -> int:
        """Draw a mark that says so many mm on the photo of a side."""
        facts: dict[str, object] = {
            "kind": "length",
            "points": json.dumps([[100, 100], [300, 100]]),
            "height_mm": 10.0,
            "height_u_mm": 1.0,
            "value": value,
            "unit": "mm",
            "expanded_u": 0.18,
            "budget": json.dumps(BUDGET),
        }
        with self.record.deed("Draw a mark") as deed:
            return deed.add(Mark, photo_id=self.photos[side], **(facts | changed))

    def lay_over(self, old_to_new: float = 0.0, on_sheet: int = 1) -> None:
        """Keep that the new photo lies on the old one, so many pixels to the right."""
        transform = [[1, 0, old_to_new], [0, 1, 0], [0, 0, 1]]
        with self.record.deed("Lay one photo on the other") as deed:
            deed.add(
                Overlay,
                old_photo_id=self.photos["removed"],
                new_photo_id=self.photos["replacement"],
                transform=json.dumps(transform),
                method="clicks",
                why="By two clicks.",
                on_sheet=on_sheet,
            )

    def take(self, name: str, side: Side, mark: int) -> Done:
        """Take a reading of a dimension from a mark."""
        return take_reading_from_mark(self.record, self.rotor.pair, known(name), side, mark)

    def both_taken(self, name: str, removed: float, replacement: float) -> tuple[int, int]:
        """Draw a mark on each side and take its reading; return the marks."""
        old, new = self.mark("removed", removed), self.mark("replacement", replacement)
        self.take(name, "removed", old)
        self.take(name, "replacement", new)
        return old, new


def a_photographed_rotor(record: ShopRecord) -> PhotoStory:
    """The rotor of J-104 with a photo of each side, both with one card's scale."""
    rotor = a_rotor(record)
    rotor.photograph(TOP, encoded(picture(640, 480)), encoded(picture(480, 640)))
    with record.reading() as connection:
        shown = read_pair(connection, rotor.pair).photos
    photos = {side: next(one.photo_id for one in shown if one.side == side) for side in SIDES}
    with record.deed("Find the scale") as deed:
        card = deed.add(
            PrintedCard, name="card by the vice", layout="{}", printed_at="2026-11-01T08:00:00"
        )
        for photo in photos.values():
            facts = {"source": "card", "card_id": card, "card_scale": 1.0}
            fit = STRAIGHT_DOWN.as_json()
            deed.add(PhotoScale, photo_id=photo, made_by="test", fit=fit, **facts)
    return PhotoStory(rotor, photos)
