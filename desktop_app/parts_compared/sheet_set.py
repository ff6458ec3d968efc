"""Parts that meet on the sheet: the verdict on their room, the sum it comes from, what is said."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_sets.set_room import SetRoom, Share
from desktop_app.parts_compared.part_sets.set_sentence import (
    SET_SIGNS,
    main_sentence,
    set_sentences,
)
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison
from desktop_app.parts_compared.sheet_blocks import Block, Heading, Listed, Rows, VerdictBox, Words
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.shown_value import amount, number

STACKED = tr(
    "At the worst everything adds up; usually part of it cancels (root of the sum of "
    "squares). ± of a reading is its expanded uncertainty at 95 % coverage."
)


def set_blocks(sheet: SheetFacts) -> Iterator[Block]:
    """Give the verdict on each set of the sheet whose room is known with the new parts."""
    for position, judged, _ in _known(sheet):
        yield Heading(_heading(position, judged))
        main = main_sentence(judged, sheet.length_unit)
        yield VerdictBox(SET_SIGNS[judged.verdict], tr(judged.verdict), main)


def set_file_blocks(sheet: SheetFacts) -> Iterator[Block]:
    """Give for each of these sets what its verdict stands on."""
    for position, judged, room in _known(sheet):
        yield Heading(_heading(position, judged))
        yield from _stands_on(judged, room, sheet.length_unit)
        if judged.next_steps and sheet.job.left_on is None:
            yield Listed(tr("To measure next"), judged.next_steps, "→")


def _known(sheet: SheetFacts) -> Iterator[tuple[str, SetComparison, SetRoom]]:
    for where, judged in sheet.sets:
        if judged.after is not None:
            yield where, judged, judged.after


def _heading(position: str, judged: SetComparison) -> str:
    heading = _capital(judged.part_set.name)
    return f"{heading}, {position}" if position.strip() else heading


def _stands_on(judged: SetComparison, room: SetRoom, length_unit: str) -> Iterator[Block]:
    said = set_sentences(judged, length_unit)[1:]
    if said:
        yield Listed(tr("What that stands on"), said)
    yield from _table(judged, room, length_unit)


def _table(judged: SetComparison, room: SetRoom, length_unit: str) -> Iterator[Block]:
    unit, factor = shop_unit(judged.part_set.unit, length_unit)
    rows = [
        (_capital(one.label), *_figures(one, unit, factor), tr(one.source)) for one in room.shares
    ]
    total = (
        _capital(judged.part_set.result),
        "",
        amount(room.value * factor, unit, room.usual * factor),
        tr(
            "± {worst} worst, ± {usual} usual",
            worst=number(room.worst * factor, room.usual * factor),
            usual=number(room.usual * factor, room.usual * factor),
        ),
        "",
    )
    head = (
        tr("With the new parts"),
        tr("counts"),
        tr("value"),
        tr("known within"),
        tr("where from"),
    )
    yield Rows(head, (*rows, total), (0.36, 0.09, 0.15, 0.24, 0.16))
    yield Words(STACKED, look="quiet")


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _figures(one: Share, unit: str, factor: float) -> tuple[str, str, str]:
    value, half_width = one.value * factor, one.half_width * factor
    return (
        f"{figure(one.times, '+g')} ×".replace("-", "\N{MINUS SIGN}"),
        amount(value, unit, half_width) if value else amount(0.0, unit),
        f"± {number(half_width, half_width)}",
    )
