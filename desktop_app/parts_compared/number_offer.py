"""Which numbers of a pair its photos offer by their barcodes, for which fields, in which words."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.part_photos.codes.code_meaning import CodeMeaning, What
from desktop_app.part_photos.signs import SIDE_NAMES
from desktop_app.parts_compared.pair_view import PairView, PhotoShown
from desktop_app.parts_compared.part_numbers import same_number
from desktop_app.parts_compared.reading import Side

MOST_OFFERED = 4  # a label bears a number, an article number, a quantity, a lot

FIELD_WORDS = {
    "number_removed": tr("Number on the removed part"),
    "number_on_box": tr("Number on the box"),
    "number_on_part": tr("Number on the new part"),
}
# An article number is the package's; no part bears one.
_FIELDS: dict[tuple[Side, What], tuple[str, ...]] = {
    ("removed", "part number"): ("number_removed",),
    ("replacement", "part number"): ("number_on_box", "number_on_part"),
    ("replacement", "article number"): ("number_on_box",),
}


@dataclass(frozen=True, slots=True)
class NumberOffer:
    """One number, the fields that it may go into, and the photos that show it."""

    value: str
    fields: tuple[str, ...]
    photo_ids: tuple[int, ...]
    says: str


def number_offers(
    pair: PairView, said: Callable[[int], Sequence[CodeMeaning]]
) -> tuple[NumberOffer, ...]:
    """Return what may be put in; `said` gives what a photo, by its id, says that is still open."""
    showing: dict[tuple[Side, CodeMeaning], list[PhotoShown]] = {}
    for photo in pair.photos:
        for seen in said(photo.photo_id):
            showing.setdefault((photo.side, seen), []).append(photo)
    offers = []
    for (side, seen), photos in showing.items():
        fields = [
            field
            for field in _FIELDS.get((side, seen.what), ())
            if not same_number(getattr(pair, field), seen.value)
        ]
        if fields:
            ids = tuple(dict.fromkeys(photo.photo_id for photo in photos))
            words = _words(pair, photos[0], seen, fields)
            offers.append(NumberOffer(seen.value, tuple(fields), ids, words))
    return tuple(offers[:MOST_OFFERED])


def _words(pair: PairView, photo: PhotoShown, seen: CodeMeaning, fields: Sequence[str]) -> str:
    sort = (
        tr("the article number (EAN or UPC)") if seen.what == "article number" else tr("the number")
    )
    said = [
        tr(
            "The photo “{name}” ({side}, {view}) shows {sort} {value}.",
            name=photo.name,
            side=SIDE_NAMES[photo.side],
            view=tr(photo.view),
            sort=sort,
            value=seen.value,
        )
    ]
    for field in fields:
        now = getattr(pair, field).strip()
        said += [tr("“{field}” has {now} now.", field=FIELD_WORDS[field], now=now)] if now else []
    return " ".join(said)
