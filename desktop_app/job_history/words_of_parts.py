"""What the rows of pairs, readings, photos and what is drawn on them are called in the history."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.job_history.table_words import (
    SIDES,
    TableWords,
    above,
    chosen,
    row,
    told,
    words,
)

_PAIR, _PHOTO = above("pair", "Pair"), above("photo", "Photo")
_SIDE, _DIMENSION = chosen("Side", SIDES), told("Dimension", "dimension")

PART_TABLES: Mapping[str, TableWords] = {
    "pair": TableWords(
        "Pair",
        {
            "job_id": above("job", "Job"),
            "part_kind": told("Part kind", "kind"),
            "position": words("Position"),
            "origin": told("Where the replacement is from", "origin"),
            "supplier": words("Supplier"),
            "lot": words("Lot"),
            "number_removed": words("Number on the removed part"),
            "number_on_box": words("Number on the box"),
            "number_on_part": words("Number on the replacement"),
            "price_cents": told("Price", "money"),
            "fate": words("What became of the removed part"),
            "note_removed": words("Note on the removed part"),
            "note_replacement": words("Note on the replacement"),
            "fitted": told("Fitted", "yes"),
        },
        ("part_kind", "position"),
    ),
    "reading": TableWords(
        "Reading",
        {
            "pair_id": _PAIR,
            "side": _SIDE,
            "dimension": _DIMENSION,
            "instrument": words("Taken with"),
            "value": told("Value", "reading"),
            "word": words("Seen"),
            "typed": words("As typed"),
            "taken_at": told("Taken at", "moment"),
        },
        ("side", "dimension"),
    ),
    "photo_reading": TableWords(
        "Reading from a mark",
        {
            "reading_id": above("reading", "Reading"),
            "mark_id": row("mark", "Mark"),
            "doubt": told("Its doubt", "figures"),
        },
    ),
    "part_condition": TableWords(
        "State of a part",
        {"pair_id": _PAIR, "side": _SIDE, "term": words("Seen")},
        ("side", "term"),
    ),
    "explanation": TableWords(
        "Why a difference is right",
        {
            "pair_id": _PAIR,
            "dimension": _DIMENSION,
            "why": words("Why"),
            "by_whom": words("By whose word"),
        },
        ("dimension",),
    ),
    "maker_limit": TableWords(
        "Maker's limits",
        {
            "pair_id": _PAIR,
            "dimension": _DIMENSION,
            "low": told("At least", "limit"),
            "high": told("At most", "limit"),
            "source": words("From"),
        },
        ("dimension",),
    ),
    "pair_photo": TableWords(
        "Photo of a part",
        {
            "pair_id": _PAIR,
            "photo_id": row("photo", "Photo"),
            "side": _SIDE,
            "view": words("View"),
        },
        ("side", "photo_id"),
    ),
    "kept_sum": TableWords(
        "Bench sum",
        {
            "job_id": above("job", "Job"),
            "sum": words("Sum"),
            "inputs": told("Put in", "figures"),
            "sentence": words("It says"),
            "on_sheet": told("On the sheet", "yes"),
        },
        ("sum",),
    ),
    "photo": TableWords(
        "Photo",
        {
            "job_id": above("job", "Job"),
            "sha256": words("SHA-256"),
            "name": words("Name"),
            "media_type": words("Sort of file"),
            "size_bytes": told("Bytes", "number"),
            "width": told("Pixels across", "number"),
            "height": told("Pixels down", "number"),
            "taken_at": told("Taken at, by the camera", "moment"),
            "note": words("Note"),
        },
        ("name",),
    ),
    "mark": TableWords(
        "Mark",
        {
            "photo_id": _PHOTO,
            "kind": words("Kind"),
            "points": told("Points", "figures"),
            "words": words("Words"),
            "height_mm": told("Height above the card", "mm"),
            "height_u_mm": told("Doubt of that height", "mm"),
            "snapped": told("Points on edges", "figures"),
            "value": told("Value", "number"),
            "unit": words("Unit"),
            "expanded_u": told("Doubt", "number"),
            "budget": told("Its budget", "figures"),
            "settings": told("Settings", "figures"),
        },
        ("kind", "words"),
    ),
    "photo_scale": TableWords(
        "Scale",
        {
            "photo_id": _PHOTO,
            "source": words("From", card="a bench card", none="taken out"),
            "card_id": row("printed_card", "Card"),
            "card_scale": told("Print of the card, times its size", "number"),
            "points": told("Two points", "figures"),
            "length_mm": told("Length between them", "mm"),
            "length_u_mm": told("Doubt of that length", "mm"),
            "fit": told("What was fitted", "figures"),
            "made_by": words("Made by version"),
        },
    ),
    "overlay": TableWords(
        "Overlay",
        {
            "old_photo_id": above("photo", "Old"),
            "new_photo_id": row("photo", "New"),
            "transform": told("How the new photo lies on the old one", "figures"),
            "method": words("Method"),
            "why": words("Why so"),
            "residual_px": told("Left over, pixels", "number"),
            "residual_mm": told("Left over", "mm"),
            "height_mm": told("Height", "mm"),
            "clicks": told("Common points", "figures"),
            "on_sheet": told("On the sheet", "yes"),
        },
        ("new_photo_id",),
    ),
}
