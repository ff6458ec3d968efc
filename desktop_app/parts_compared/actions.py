"""What the shop does with a removed part and its replacement, one function a deed."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.parts_compared import stored_pairs as look
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.readings_typed import Typed, read_readings, split_from_marks
from desktop_app.parts_compared.stored import (
    Explanation,
    Instrument,
    MakerLimit,
    Pair,
    PairPhoto,
    PartCondition,
    Reading,
)
from desktop_app.parts_compared.stored_gauge import studied_in_another_unit
from desktop_app.parts_compared.stored_photo_readings import marked_among, remove_reading
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

#: The texts of a pair, with the name of the deed that writes one down.
PAIR_TEXTS = {
    "position": tr("Write down the position"),
    "supplier": tr("Write down the supplier"),
    "lot": tr("Write down the lot"),
    "number_removed": tr("Write down the number removed"),
    "number_on_box": tr("Write down the number on box"),
    "number_on_part": tr("Write down the number on part"),
    "fate": tr("Write down the fate"),
    "note_removed": tr("Write down the note removed"),
    "note_replacement": tr("Write down the note replacement"),
}


LARGEST = 1e9  # of any unit; not so for a NaN


def lay_side_by_side(record: ShopRecord, job_id: int, part_kind: str, position: str = "") -> Done:
    """Begin a comparison: a removed part and its replacement of one kind in one position."""
    return record.do(
        tr("Lay old and new side by side"),
        lambda deed: _add(deed, job_id=job_id, part_kind=part_kind, position=position),
    )


def take_pair_away(record: ShopRecord, pair_id: int) -> Done:
    """Take a pair out with its readings; photos stay with the job, and undo brings all back."""

    def work(deed: Deed) -> None:
        for table, row in look.rows_of_pair(deed, pair_id):
            deed.remove(table, row)
        deed.remove(Pair, pair_id)

    return record.do(tr("Take the pair away"), work)


def write_readings(
    record: ShopRecord,
    pair_id: int,
    dimension: Dimension,
    side: Side,
    text: str,
    instrument: str = "",
    length_unit: str = "mm",
) -> Done:
    """Write down the readings of one side; what the field holds replaces what was there.

    Readings that stay as they were keep their rows; one from a mark on a photo stays as long as
    it stands in the field. Raises a ShopTrouble that says what the field accepts; nothing is
    changed then.
    """
    tool = instrument or dimension.instrument
    wanted = read_readings(text, dimension, length_unit)

    def work(deed: Deed) -> None:
        rows = look.reading_rows(deed, pair_id, dimension.name, side)
        still = _keep_marked(deed, rows, wanted)
        kept = list(rows.items())
        same = 0
        for (_, (typed, used)), (_, _, new) in zip(kept, still, strict=False):
            if typed != new or used != tool:
                break
            same += 1
        for row, _ in kept[same:]:
            deed.remove(Reading, row)
        for value, word, typed in still[same:]:
            deed.add(
                Reading,
                pair_id=pair_id,
                side=side,
                dimension=dimension.name,
                instrument=tool,
                value=value,
                word=word,
                typed=typed,
                taken_at=record.clock().isoformat(timespec="seconds"),
            )

    return record.do(tr("Write down the {label}", label=dimension.label), work)


def see_condition(record: ShopRecord, pair_id: int, side: Side, term: str, *, seen: bool) -> Done:
    """Note that a condition was seen on a part, or take the note back."""

    def work(deed: Deed) -> None:
        row = look.condition_row(deed, pair_id, side, term)
        if seen and row is None:
            deed.add(PartCondition, pair_id=pair_id, side=side, term=term)
        elif not seen and row is not None:
            deed.remove(PartCondition, row)

    return record.do(tr("Note “{term}”", term=term), work)


def explain_difference(
    record: ShopRecord, pair_id: int, dimension: str, why: str, by_whom: str
) -> Done:
    """Say why a difference is as it should be and by whose word; empty words take it back."""
    if why.strip() and not by_whom.strip():
        raise ShopTrouble(
            tr("By whose word is that?"), do=tr("Name the letter, the bulletin or the person.")
        )

    def work(deed: Deed) -> None:
        row = look.explanation_row(deed, pair_id, dimension)
        if not why.strip():
            if row is not None:
                deed.remove(Explanation, row)
        elif row is None:
            deed.add(
                Explanation,
                pair_id=pair_id,
                dimension=dimension,
                why=why.strip(),
                by_whom=by_whom.strip(),
            )
        else:
            deed.change(Explanation, row, why=why.strip(), by_whom=by_whom.strip())

    return record.do(tr("Explain a difference"), work)


def enter_limits(
    record: ShopRecord,
    pair_id: int,
    dimension: str,
    low: float | None,
    high: float | None,
    source: str,
) -> Done:
    """Enter the maker's limits for a dimension, in its unit; both ends open take them back."""
    if any(end is not None and not abs(end) <= LARGEST for end in (low, high)):
        raise ShopTrouble(tr("A limit is a number."), do=tr("Accepted: a number, or nothing."))
    if low is not None and high is not None and low > high:
        raise ShopTrouble(
            tr("The lower limit {low:g} is above the upper one {high:g}.", low=low, high=high),
            do=tr("Swap them."),
        )

    def work(deed: Deed) -> None:
        row = look.limit_row(deed, pair_id, dimension)
        if low is None and high is None:
            if row is not None:
                deed.remove(MakerLimit, row)
        elif row is None:
            deed.add(
                MakerLimit, pair_id=pair_id, dimension=dimension, low=low, high=high, source=source
            )
        else:
            deed.change(MakerLimit, row, low=low, high=high, source=source)

    return record.do(tr("Enter the maker's limits"), work)


def write_about_pair(record: ShopRecord, pair_id: int, field: str, words: str) -> Done:
    """Write down a number, a supplier, a note ... of a pair; `field` is one of PAIR_TEXTS."""
    if field not in PAIR_TEXTS:
        raise ValueError(f"a pair has no text called {field}")
    return record.do(
        PAIR_TEXTS[field],
        lambda deed: deed.change(Pair, pair_id, **{field: words}),
    )


def say_origin(record: ShopRecord, pair_id: int, origin: str | None) -> Done:
    """Say where the replacement comes from."""
    return record.do(
        tr("Say where it comes from"), lambda deed: deed.change(Pair, pair_id, origin=origin)
    )


def say_fitted(record: ShopRecord, pair_id: int, *, fitted: bool) -> Done:
    """Say whether the replacement was fitted, or was stopped before."""
    words = tr("Fit the replacement") if fitted else tr("Stop before fitting")
    return record.do(words, lambda deed: deed.change(Pair, pair_id, fitted=int(fitted)))


def show_in_pair(
    record: ShopRecord, pair_id: int, photos: Sequence[int], side: Side, view: str
) -> Done:
    """Let photos of the job stand for one side of a pair in one view."""

    def work(deed: Deed) -> None:
        for photo in photos:
            deed.add(PairPhoto, pair_id=pair_id, photo_id=photo, side=side, view=view)

    return record.do(tr("Put photos to a part"), work)


def take_from_pair(record: ShopRecord, link_id: int) -> Done:
    """Take a photo from a pair; it stays with the job."""
    return record.do(tr("Take a photo from a part"), lambda deed: deed.remove(PairPhoto, link_id))


def keep_instrument(
    record: ShopRecord,
    name: str,
    unit: str,
    resolution: float,
    max_error: float,
    checked_on: str | None = None,
) -> Done:
    """Put an instrument into the tool drawer, or change what is known of it."""
    name = name.strip()
    if not name:
        raise ShopTrouble(
            tr("Which instrument is it?"), do=tr("Give it a name, such as “calliper 2”.")
        )
    if not (0 <= resolution <= LARGEST and 0 <= max_error <= LARGEST):
        raise ShopTrouble(tr("Resolution and permitted error are numbers, zero or more."))
    facts = {
        "unit": unit,
        "resolution": resolution,
        "max_error": max_error,
        "checked_on": checked_on,
        "in_use": 1,
    }

    def work(deed: Deed) -> None:
        row = look.instrument_row(deed, name)
        if row is None:
            deed.add(Instrument, name=name, **facts)
        elif studied_in_another_unit(deed.connection, row, unit):
            raise ShopTrouble(
                tr("The gauge studies of the {name} were read in another unit.", name=name),
                kept=tr("Nothing was changed."),
                do=tr("Give the instrument in the other unit a name of its own."),
            )
        else:
            deed.change(Instrument, row, **facts)

    return record.do(tr("Keep the {name}", name=name), work)


def put_instrument_away(record: ShopRecord, row: int) -> Done:
    """Take an instrument out of use; readings made with it keep its name."""
    return record.do(
        tr("Put an instrument away"), lambda deed: deed.change(Instrument, row, in_use=0)
    )


def _keep_marked(
    deed: Deed, rows: dict[int, tuple[str, str]], wanted: Sequence[Typed]
) -> list[Typed]:
    """Keep readings from marks that are still wanted, and take out the others.

    `rows` is left with those that were typed; what is wanted beside the kept ones is returned.
    """
    marked = list(marked_among(deed, list(rows)))
    stays, still = split_from_marks(wanted, [rows.pop(row)[0] for row in marked])
    for row, stay in zip(marked, stays, strict=True):
        if not stay:
            remove_reading(deed, row)
    return still


def _add(deed: Deed, **values: object) -> None:
    deed.add(Pair, **values)
