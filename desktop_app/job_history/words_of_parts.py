"""What the rows of pairs, readings, photos and what is drawn on them are called in the history."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.job_history.table_words import (
    SIDES,
    TableWords,
    above,
    chosen,
    row,
    term,
    told,
    words,
)
from desktop_app.language import marked, tr

# Words of the record that are shown in the language spoken.
TERMS = (
    *(marked("kept on the bench"), marked("kept for the customer")),
    *(marked("given to the customer"), marked("sent back as core")),
    *(marked("sent to the supplier"), marked("thrown away")),
    *(marked("length"), marked("point-to-line"), marked("circle"), marked("angle")),
    *(marked("parallel-distance"), marked("round-bar"), marked("count"), marked("note")),
    *(marked("surface"), marked("bare-metal")),
    *(marked("same picture"), marked("card and outline"), marked("card and two clicks")),
    *(marked("card, two clicks and outline"), marked("outline"), marked("features")),
    *(marked("clicks"), marked("none")),
)

_PAIR, _PHOTO = above("pair", tr("Pair")), above("photo", tr("Photo"))
_SIDE, _DIMENSION = chosen(tr("Side"), SIDES), told(tr("Dimension"), "dimension")

PART_TABLES: Mapping[str, TableWords] = {
    "pair": TableWords(
        tr("Pair"),
        {
            "job_id": above("job", tr("Job")),
            "part_kind": told(tr("Part kind"), "kind"),
            "position": told(tr("Position"), "place"),
            "origin": told(tr("Where the replacement is from"), "origin"),
            "supplier": words(tr("Supplier")),
            "lot": words(tr("Lot")),
            "number_removed": words(tr("Number on the removed part")),
            "number_on_box": words(tr("Number on the box")),
            "number_on_part": words(tr("Number on the replacement")),
            "price_cents": told(tr("Price"), "money"),
            "fate": term(tr("What became of the removed part")),
            "note_removed": words(tr("Note on the removed part")),
            "note_replacement": words(tr("Note on the replacement")),
            "fitted": told(tr("Fitted"), "yes"),
        },
        ("part_kind", "position"),
    ),
    "reading": TableWords(
        tr("Reading"),
        {
            "pair_id": _PAIR,
            "side": _SIDE,
            "dimension": _DIMENSION,
            "instrument": told(tr("Taken with"), "instrument"),
            "value": told(tr("Value"), "reading"),
            "word": told(tr("Seen"), "seen"),
            "typed": words(tr("As typed")),
            "taken_at": told(tr("Taken at"), "moment"),
        },
        ("side", "dimension"),
    ),
    "photo_reading": TableWords(
        tr("Reading from a mark"),
        {
            "reading_id": above("reading", tr("Reading")),
            "mark_id": row("mark", tr("Mark")),
            "doubt": told(tr("Its doubt"), "figures"),
        },
    ),
    "part_condition": TableWords(
        tr("State of a part"),
        {"pair_id": _PAIR, "side": _SIDE, "term": told(tr("Seen"), "state of a part")},
        ("side", "term"),
    ),
    "explanation": TableWords(
        tr("Why a difference is right"),
        {
            "pair_id": _PAIR,
            "dimension": _DIMENSION,
            "why": words(tr("Why")),
            "by_whom": words(tr("By whose word")),
        },
        ("dimension",),
    ),
    "maker_limit": TableWords(
        tr("Maker's limits"),
        {
            "pair_id": _PAIR,
            "dimension": _DIMENSION,
            "low": told(tr("At least"), "limit"),
            "high": told(tr("At most"), "limit"),
            "source": words(tr("From")),
        },
        ("dimension",),
    ),
    "pair_photo": TableWords(
        tr("Photo of a part"),
        {
            "pair_id": _PAIR,
            "photo_id": row("photo", tr("Photo")),
            "side": _SIDE,
            "view": term(tr("View")),
        },
        ("side", "photo_id"),
    ),
    "kept_sum": TableWords(
        tr("Bench sum"),
        {
            "job_id": above("job", tr("Job")),
            "sum": words(tr("Sum")),
            "inputs": told(tr("Put in"), "figures"),
            "sentence": words(tr("It says")),
            "on_sheet": told(tr("On the sheet"), "yes"),
        },
        ("sum",),
    ),
    "photo": TableWords(
        tr("Photo"),
        {
            "job_id": above("job", tr("Job")),
            "sha256": words("SHA-256"),
            "name": words(tr("Name")),
            "media_type": words(tr("Sort of file")),
            "size_bytes": told(tr("Bytes"), "number"),
            "width": told(tr("Pixels across"), "number"),
            "height": told(tr("Pixels down"), "number"),
            "taken_at": told(tr("Taken at, by the camera"), "moment"),
            "note": words(tr("Note")),
        },
        ("name",),
    ),
    "mark": TableWords(
        tr("Mark"),
        {
            "photo_id": _PHOTO,
            "kind": term(tr("Kind")),
            "points": told(tr("Points"), "figures"),
            "words": words(tr("Words")),
            "height_mm": told(tr("Height above the card"), "mm"),
            "height_u_mm": told(tr("Doubt of that height"), "mm"),
            "snapped": told(tr("Points on edges"), "figures"),
            "value": told(tr("Value"), "number"),
            "unit": words(tr("Unit")),
            "expanded_u": told(tr("Doubt"), "number"),
            "budget": told(tr("Its budget"), "figures"),
            "settings": told(tr("Settings"), "figures"),
        },
        ("kind", "words"),
    ),
    "photo_scale": TableWords(
        tr("Scale"),
        {
            "photo_id": _PHOTO,
            "source": words(tr("From"), card=tr("a bench card"), none=tr("taken out")),
            "card_id": row("printed_card", tr("Card")),
            "card_scale": told(tr("Print of the card, times its size"), "number"),
            "points": told(tr("Two points"), "figures"),
            "length_mm": told(tr("Length between them"), "mm"),
            "length_u_mm": told(tr("Doubt of that length"), "mm"),
            "fit": told(tr("What was fitted"), "figures"),
            "made_by": words(tr("Made by version")),
        },
    ),
    "overlay": TableWords(
        tr("Overlay"),
        {
            "old_photo_id": above("photo", tr("Old")),
            "new_photo_id": row("photo", tr("New")),
            "transform": told(tr("How the new photo lies on the old one"), "figures"),
            "method": term(tr("Method")),
            "why": words(tr("Why so")),
            "residual_px": told(tr("Left over, pixels"), "number"),
            "residual_mm": told(tr("Left over"), "mm"),
            "height_mm": told(tr("Height"), "mm"),
            "clicks": told(tr("Common points"), "figures"),
            "on_sheet": told(tr("On the sheet"), "yes"),
        },
        ("new_photo_id",),
    ),
}
