"""Gathering what a comparison sheet needs from the record and the photo folder."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_sets.set_reasons import with_set_reasons
from desktop_app.parts_compared.sheet_facts import (
    PairPrinted,
    SheetFacts,
    ViewPrinted,
)
from desktop_app.parts_compared.sheet_units import instrument_words, judge_in
from desktop_app.parts_compared.sheet_views import ViewChosen, views_to_print
from desktop_app.parts_compared.stored_kinds import own_bodies
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.parts_compared.stored_sets import JobSet, sets_of_pairs
from desktop_app.parts_compared.stored_sheet_photos import (
    DrawnPhotos,
    drawn_photos,
    overlay_printed,
    photos_printed,
)
from desktop_app.parts_compared.stored_sums import sums_of_job
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.shop_record.house_rules import HouseRules, read_rules
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import HistoryEntry

MARKS = tr("marks on the photos (each with the uncertainty of its own budget)")


def read_sheet(record: ShopRecord, job_id: int, kinds: Mapping[str, PartKind]) -> SheetFacts:
    """Return the facts of a job's sheet; a ShopTrouble where there is no such job.

    Photos are decoded here, which takes its time: call it beside the window.
    """
    with record.reading() as connection:
        rules = read_rules(connection)
        job = read_job(connection, job_id)
        proof = read_proof(connection, job_id)
        tools = drawer(connection)
        pairs = [read_pair(connection, pair_id) for pair_id in pairs_of_job(connection, job_id)]
        photos = drawn_photos(connection, {shown.photo_id for one in pairs for shown in one.photos})
        own = own_bodies(connection).keys()
        sets = sets_of_pairs(connection, job_id, pairs, kinds, tools)
        sums = sums_of_job(connection, job_id)
        seq, last_hash = _history_end(connection)
    return SheetFacts(
        shop_name=rules.shop_name,
        paper=rules.paper,
        job=job,
        pairs=tuple(
            _with_sets(
                _printed(pair, kinds.get(pair.part_kind), tools, rules, record, photos),
                sets,
                rules.length_unit,
                pair.part_kind in own,
            )
            for pair in pairs
        ),
        made_at=record.clock().isoformat(timespec="seconds"),
        history_seq=seq,
        history_hash=last_hash,
        sums=tuple(one for one in sums if one.on_sheet),
        sets=tuple((one.position, one.judged) for one in sets),
        length_unit=rules.length_unit,
        proof=proof,
    )


def _with_sets(
    printed: PairPrinted, sets: tuple[JobSet, ...], length_unit: str, own_kind: bool
) -> PairPrinted:
    if printed.compared is None:
        return printed
    mine = [one.judged for one in sets if printed.pair.id in one.pair_ids]
    return replace(
        printed, compared=with_set_reasons(printed.compared, mine, length_unit), own_kind=own_kind
    )


def _history_end(connection: Connection) -> tuple[int, str]:
    last = connection.execute(
        select(HistoryEntry.seq, HistoryEntry.hash).order_by(HistoryEntry.seq.desc()).limit(1)
    ).first()
    return (0, "") if last is None else (last.seq, last.hash)


def _printed(
    pair: PairView,
    kind: PartKind | None,
    tools: Mapping[str, Instrument],
    rules: HouseRules,
    record: ShopRecord,
    photos: DrawnPhotos,
) -> PairPrinted:
    today = record.clock().date()
    return PairPrinted(
        pair=pair,
        kind=kind,
        compared=None if kind is None else _judged(pair, kind, tools, rules),
        views=tuple(
            _view(chosen, record.photos, photos, rules.length_unit)
            for chosen in views_to_print(pair, kind)
        ),
        instruments=() if kind is None else _instruments(pair, kind, tools, rules, today),
    )


def _judged(
    pair: PairView, kind: PartKind, tools: Mapping[str, Instrument], rules: HouseRules
) -> PairComparison:
    return judge_in(rules.length_unit, pair, kind, tools, rules.confidence)


def _instruments(
    pair: PairView,
    kind: PartKind,
    tools: Mapping[str, Instrument],
    rules: HouseRules,
    today: date,
) -> tuple[str, ...]:
    """Describe the instruments that the readings were made with, each once."""
    described: dict[str, None] = {}
    for reading in pair.readings:
        dimension = kind.dimension(reading.dimension)
        if dimension is None or dimension.role in ("word", "count"):
            continue
        if reading.photo:
            described.setdefault(MARKS)
            continue
        name = reading.instrument or dimension.instrument
        words = instrument_words(name, dimension.unit, rules.length_unit, tools.get(name), today)
        described.setdefault(words)
    return tuple(described)


def _view(
    chosen: ViewChosen, files: PhotoFiles, photos: DrawnPhotos, length_unit: str
) -> ViewPrinted:
    old, new = photos_printed(chosen.removed, chosen.replacement, photos, files, length_unit)
    overlay = None
    if chosen.removed and chosen.replacement and old and new and old.jpeg and new.jpeg:
        overlay = overlay_printed(chosen.removed, chosen.replacement, photos, files, length_unit)
    return ViewPrinted(chosen.view, old, new, overlay)
