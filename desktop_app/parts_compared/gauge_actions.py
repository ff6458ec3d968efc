"""What the shop does in a gauge study, one function a deed."""

from __future__ import annotations

import math

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.gauge_plan import Place
from desktop_app.parts_compared.instruments.gauge_sentence import too_few_sentence
from desktop_app.parts_compared.instruments.gauge_study import study
from desktop_app.parts_compared.stored import GaugeReading, GaugeStudy, Instrument
from desktop_app.parts_compared.stored_gauge import StudyKept, read_study, studies_in_use
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

_LONGEST = 80


def begin_study(
    record: ShopRecord, instrument_id: int, about: str, place: Place, value: float
) -> Done:
    """Begin a gauge study with its first reading, in the instrument's unit."""
    place = _named(place)

    def work(deed: Deed) -> None:
        made = deed.add(
            GaugeStudy,
            instrument_id=instrument_id,
            about=about.strip(),
            begun_at=record.clock().isoformat(timespec="seconds"),
            taken_over=0,
        )
        _add(deed, made, place, value)

    return record.do(tr("Begin a gauge study"), work)


def add_reading(record: ShopRecord, study_id: int, place: Place, value: float) -> Done:
    """Write down one more reading of a study, in the instrument's unit."""
    place = _named(place)

    def work(deed: Deed) -> None:
        kept = _open_study(deed, study_id)
        taken = {(one.person, one.part, one.trial) for one in kept.readings.values()}
        if place in taken:
            person, part, trial = place
            raise ShopTrouble(
                tr(
                    "Reading {trial} of part {part} by {person} is there already.",
                    trial=trial,
                    part=part,
                    person=person,
                ),
                do=tr("Look at the page again; somebody may have read at another desk."),
            )
        _add(deed, study_id, place, value)

    return record.do(tr("Write down a gauge reading"), work)


def take_reading_out(record: ShopRecord, study_id: int, row: int) -> Done:
    """Take a reading out of a study."""

    def work(deed: Deed) -> None:
        _open_study(deed, study_id)
        deed.remove(GaugeReading, row)

    return record.do(tr("Take a gauge reading out"), work)


def name_person(record: ShopRecord, study_id: int, before: str, name: str) -> Done:
    """Give a person of a study another name; the readings stay."""
    name = _named((name, 1, 1))[0]

    def work(deed: Deed) -> None:
        readings = read_study(deed.connection, study_id).readings
        if name != before and any(one.person == name for one in readings.values()):
            raise ShopTrouble(
                tr("{name} is the other one.", name=name), do=tr("Give each person another name.")
            )
        for row, one in readings.items():
            if one.person == before:
                deed.change(GaugeReading, row, person=name)

    return record.do(tr("Name who reads"), work)


def say_what_is_read(record: ShopRecord, study_id: int, about: str) -> Done:
    """Say which part or parts are read in a study."""
    return record.do(
        tr("Say what is read"), lambda deed: deed.change(GaugeStudy, study_id, about=about.strip())
    )


def use_from_now_on(record: ShopRecord, study_id: int) -> Done:
    """Let the instrument's repeatability come from a study; a ShopTrouble where it has too few."""

    def work(deed: Deed) -> None:
        kept = read_study(deed.connection, study_id)
        result = study(tuple(kept.readings.values()))
        if not result.enough or result.repeatability is None:
            raise ShopTrouble(
                too_few_sentence(result), kept=tr("The usual figure goes on counting.")
            )
        for other in studies_in_use(deed.connection, kept.instrument_id):
            if other != study_id:
                deed.change(GaugeStudy, other, taken_over=0)
        deed.change(GaugeStudy, study_id, taken_over=1)
        deed.change(Instrument, kept.instrument_id, repeatability=result.repeatability)

    return record.do(tr("Use our own repeatability"), work)


def back_to_usual(record: ShopRecord, instrument_id: int) -> Done:
    """Let the figure that is usual for the instrument count again; the studies stay."""

    def work(deed: Deed) -> None:
        for one in studies_in_use(deed.connection, instrument_id):
            deed.change(GaugeStudy, one, taken_over=0)
        deed.change(Instrument, instrument_id, repeatability=None)

    return record.do(tr("Go back to the usual repeatability"), work)


def _named(place: Place) -> Place:
    person, part, trial = place
    name = " ".join(person.split())
    if not name:
        raise ShopTrouble(tr("Who reads?"), do=tr("Give the person a name or initials."))
    if len(name) > _LONGEST:
        raise ShopTrouble(tr("The name has more than {longest} letters.", longest=_LONGEST))
    return name, part, trial


def _open_study(deed: Deed, study_id: int) -> StudyKept:
    """Return a study whose readings may change: one that is in use stays as it was judged by."""
    kept = read_study(deed.connection, study_id)
    if kept.taken_over:
        raise ShopTrouble(
            tr("This study is in use; its readings stay as they are."),
            kept=tr("Nothing was changed."),
            do=tr("Begin another study, or go back to the usual figure first."),
        )
    return kept


def _add(deed: Deed, study_id: int, place: Place, value: float) -> None:
    if not math.isfinite(value):
        raise ShopTrouble(tr("A reading is a number."), do=tr("Accepted: a number like 12.01."))
    person, part, trial = place
    deed.add(GaugeReading, study_id=study_id, person=person, part=part, trial=trial, value=value)
