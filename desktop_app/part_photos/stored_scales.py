"""Reading back what gives photos their millimetres, and which printed cards that may be."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, RowMapping, Select, select

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.camera.two_points import MOST_MM, TwoPointScale
from desktop_app.part_photos.kept_json import (
    kept_figure,
    kept_json,
    kept_number,
    kept_object,
    kept_pixels,
)
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.stored import PhotoScale
from desktop_app.part_photos.stored_cards import AnyCard, printed_card, prints_of
from desktop_app.shop_record.kept_value import damaged
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble


@dataclass(frozen=True, slots=True)
class KeptScale:
    """What gives a photo its millimetres; `points` and lengths (mm) where two points do.

    A card's scale was worked out for a card printed `card_scale` times as large as drawn. `prints`
    are the ids of the printed cards of which one lies in the photo: `card_id` alone where that is
    said, none where no print was noted.
    """

    id: int
    photo_id: int
    scale: PlaneScale
    card_id: int | None
    points: tuple[Pixel, ...] = ()
    length_mm: float | None = None
    length_u_mm: float | None = None
    card_scale: float = 1.0
    prints: tuple[int, ...] = ()


NO_SCALE = "none"  # the source of a scale that somebody took out: it is looked for no more


def scale_of_photo(connection: Connection, photo_id: int) -> KeptScale | None:
    """Return what gives a photo its millimetres, or None."""
    row = (
        connection.execute(select(PhotoScale.__table__).where(PhotoScale.photo_id == photo_id))
        .mappings()
        .first()
    )
    return None if row is None or row["source"] == NO_SCALE else _scale(row)


def readable_scale(
    connection: Connection, photo_id: int
) -> tuple[KeptScale | None, ShopTrouble | None]:
    """Return what gives a photo its millimetres, or why the kept scale can't be read."""
    try:
        return scale_of_photo(connection, photo_id), None
    except ShopDamaged as trouble:
        return None, trouble


def scale_row_of_photo(connection: Connection, photo_id: int) -> int | None:
    """Return the id of a photo's scale, damaged, taken out or not, or None."""
    asked = select(PhotoScale.id).where(PhotoScale.photo_id == photo_id)
    return connection.execute(asked).scalar()


def was_taken_out(connection: Connection, photo_id: int) -> bool:
    """Tell whether somebody took the photo's scale out."""
    asked = select(PhotoScale.source).where(PhotoScale.photo_id == photo_id)
    return connection.execute(asked).scalar() == NO_SCALE


def any_may_rest_on(connection: Connection, card_id: int) -> bool:
    """Tell, without reading them, whether the scale of a photo may rest on this printed card."""
    return connection.execute(_from_card(card_id).limit(1)).first() is not None


def scales_resting_on(connection: Connection, card_id: int) -> tuple[KeptScale, ...]:
    """Return the scales of all photos in which this printed card lies, or may lie.

    Damaged ones are left out: they give nobody millimetres.
    """
    found = []
    for row in connection.execute(_from_card(card_id)).mappings().all():
        try:
            kept = _scale(row)
        except ShopDamaged:
            continue
        if card_id in kept.prints:
            found.append(kept)
    return tuple(found)


def _from_card(card_id: int) -> Select[Any]:
    return select(PhotoScale.__table__).where(
        PhotoScale.source == "card",
        (PhotoScale.card_id == card_id) | PhotoScale.card_id.is_(None),
    )


def _scale(row: RowMapping) -> KeptScale:
    try:
        if row["source"] == "card":
            return _card_scale(row)
        length = kept_number(row["length_mm"], 0.0, MOST_MM)
        length_u = kept_figure(row["length_u_mm"]) or 0.0
        one, other = kept_pixels(kept_json(row["points"]))
        scale = TwoPointScale((one, other), length, length_u)
    except (ValueError, ShopTrouble) as error:
        shown = row["fit"] if row["source"] == "card" else row["points"]
        raise damaged(
            shown, tr("the scale of photo {photo_id}", photo_id=row["photo_id"])
        ) from error
    return KeptScale(row["id"], row["photo_id"], scale, None, (one, other), length, length_u)


def _card_scale(row: RowMapping) -> KeptScale:
    scale = CardScale.from_json(row["fit"])
    said = kept_figure(row["card_scale"], 0.5, 2.0)
    factor = 1.0 if said is None else said  # drawn as it should be, where nobody said otherwise
    among = kept_object(row["fit"]).get("prints", [])
    if not isinstance(among, list) or not all(isinstance(one, int) for one in among):
        raise ValueError("no list of printed cards")
    prints = (row["card_id"],) if row["card_id"] is not None else tuple(among)
    return KeptScale(
        row["id"], row["photo_id"], scale, row["card_id"], card_scale=factor, prints=prints
    )


def card_of_scale(connection: Connection, kept: KeptScale | None) -> CardLayout | None:
    """Return the layout of the card that gives a scale: as the shop printed it, else our own.

    None where no card does, and where its layout is gone.
    """
    if kept is None or not isinstance(kept.scale, CardScale):
        return None
    for card_id in kept.prints:
        try:
            return printed_card(connection, card_id).layout
        except ShopTrouble:
            pass  # another print of it, or its name, tells as much
    name = kept.scale.card
    return next((one for one in map(bench_card, PAGES_MM) if one.name == name), None)


def prints_to_choose(connection: Connection, kept: KeptScale | None) -> tuple[AnyCard, ...]:
    """Return the printed cards that may lie in a photo with this scale, the latest first.

    They have its card's layout. Those put away are among them: the photo may be older than that.
    """
    layout = card_of_scale(connection, kept)
    return () if layout is None else prints_of(connection, layout)
