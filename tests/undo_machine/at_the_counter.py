"""The deeds of the counter: a car comes, what is said and done about it, and it leaves."""

from __future__ import annotations

from desktop_app.repair_jobs import actions, odometer_actions, vehicle_actions, who_actions
from desktop_app.repair_jobs.concern_conditions import CONDITION_IDS
from desktop_app.repair_jobs.stored import (
    Job,
    JobCheck,
    Person,
    TroubleCode,
    Vehicle,
    VehicleEvent,
    Visit,
)
from desktop_app.repair_jobs.who_did_what import DIDS, WORKS
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.stored_judged_between import refuse_where_judged
from desktop_app.returns_watched.stored_windows import promise_at_hand_over
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.undo_machine.deeds_to_do import CENTS, HOURS, READINGS, Deeds, Given, Seen, using

SYMPTOMS = tuple(group.id for group in shop_vocabulary().groups[:4])
CONDITIONS = (*sorted(CONDITION_IDS)[:4], "on Sundays")
CODES = ("P0300", "p 0301", "U0100", "none", "")
KINDS, STAGES = (*actions.CODE_KINDS, "odd"), (*actions.CODE_STAGES, "later")
PLATES = ("TIN 01", "tin-02", "TIN 77", "")
VINS = ("1M8GDM9AXKP042788", "1m8gdm9axkp042788 ", "", "SHORT")
UNITS = ("mi", "km", "furlong")


def a_car(seen: Seen) -> Given:
    """Take in a known car, or one that nobody knows yet."""
    known = seen.one(Vehicle) if seen.yes() else None
    return using(
        WriteUp(
            concern=seen.words(),
            vehicle_id=known,
            another_than=seen.one(Vehicle) if known is None and seen.yes() else None,
            vin=seen.of(VINS),
            plate=seen.of(PLATES),
            tag=seen.of(("", "blue key")),
            description=seen.of(("", "2.2-litre estate")),
            odometer_unit=seen.of(UNITS),
            odometer=seen.of(READINGS),
            odometer_unread=seen.of(("", "display dead")),
            odometer_source=seen.of(("read", "told", "guessed")),
            customer=seen.of(("", "Tin Heron")),
            says_same=seen.yes(),
            symptoms=seen.some(SYMPTOMS),
            conditions=seen.some(CONDITIONS[:-1]),
        )
    )


def words_of_job(column: str) -> object:
    """Write words into one column of a job, on what its page showed there."""

    def choose(seen: Seen) -> Given:
        job = seen.one(Job)
        return using(job, seen.words(), shown=seen.shown(Job, job, column))

    return choose


def a_hand_over(seen: Seen) -> Given:
    """Let a car leave, mostly one that is still here."""
    job = seen.one(Job, left_at=None) if seen.yes() else seen.one(Job)
    missing = seen.of(((), (), (), ("the cause",)))
    promise = seen.of((None, promise_at_hand_over))
    left = seen.of(("", "", seen.day().isoformat(), "yesterday"))
    return using(job, seen.of(READINGS), missing, left, promise)


def hours(seen: Seen) -> Given:
    """Write down hours, those that are paid or the others."""
    job, unbilled = seen.one(Job), seen.yes()
    column = "unbilled_hours" if unbilled else "hours"
    return using(job, seen.of(HOURS), unbilled, seen.shown(Job, job, column))


def concern(seen: Seen) -> Given:
    """Write the concern, with the symptoms that are read from it."""
    job = seen.one(Job)
    return using(job, seen.words(), seen.some(SYMPTOMS), seen.shown(Job, job, "concern"))


def price(seen: Seen) -> Given:
    """Write a price."""
    job = seen.one(Job)
    return using(job, seen.of(CENTS), seen.shown(Job, job, "price_cents"))


def search_hours(seen: Seen) -> Given:
    """Write how long was searched."""
    job = seen.one(Job)
    return using(job, seen.of(HOURS), seen.shown(Job, job, "search_hours"))


def work(seen: Seen) -> Given:
    """Say what kind of work it is."""
    job = seen.one(Job)
    return using(job, seen.of((None, *WORKS, "magic")), seen.shown(Job, job, "work"))


def odometer(seen: Seen) -> Given:
    """Change what the odometer said when the car came."""
    visit = seen.one(Visit)
    shown = seen.shown(Visit, visit, "odometer_in", "odometer_unread")
    return using(visit, seen.of(READINGS), seen.of(("", "battery flat")), shown)


def odometer_out(seen: Seen) -> Given:
    """Change what the odometer said when the car left."""
    job = seen.one(Job)
    return using(job, seen.of(READINGS), seen.shown(Job, job, "odometer_out"))


def event(seen: Seen) -> Given:
    """Note what happened to a car."""
    kind = seen.of((*odometer_actions.EVENT_KINDS, "washed"))
    day = seen.of((seen.day().isoformat(), "Monday"))
    readings = seen.of(READINGS), seen.of(READINGS)
    return using(seen.one(Vehicle), kind, day, *readings, seen.words())


def of_vehicle(seen: Seen) -> Given:
    """Change what is known of a car: some of it."""
    typed = {
        "vin": seen.of(VINS),
        "plate": seen.of(PLATES),
        "tag": seen.words(),
        "description": seen.words(),
    }
    names = {seen.of(list(typed)), *seen.some(list(typed))}
    return using(seen.one(Vehicle), **{name: typed[name] for name in sorted(names)})


DEEDS: Deeds = {
    actions.write_up: a_car,
    actions.add_job: lambda s: using(s.one(Visit), s.words(), s.some(SYMPTOMS)),
    actions.write_concern: concern,
    actions.choose_symptom: lambda s: using(s.one(Job), s.of(SYMPTOMS), chosen=s.yes()),
    actions.say_same_trouble: lambda s: using(s.one(Job), same=s.yes()),
    actions.tick_condition: lambda s: using(
        s.one(Job), s.of(CONDITIONS), s.of((None, True, False))
    ),
    actions.write_code: lambda s: using(s.one(Job), s.of(CODES), s.of(KINDS), s.of(STAGES)),
    actions.strike_code: lambda s: using(s.one(TroubleCode)),
    actions.write_finding: lambda s: using(s.one(Job), s.words()),
    actions.strike_check: lambda s: using(s.one(JobCheck)),
    actions.tick_check: lambda s: using(
        *(s.one(Job), s.of(("refit", "proof", "odd"))),
        *(s.of(("clips back", "no leaks")), s.of(("done", "not needed", ""))),
    ),
    actions.name_cause: words_of_job("cause"),
    actions.take_not_caught_back: lambda s: using(s.one(Job)),
    actions.say_not_caught: lambda s: using(s.one(Job)),
    actions.write_correction: words_of_job("correction"),
    actions.choose_system: lambda s: using(s.one(Job), s.of(("ignition", "brakes", ""))),
    actions.choose_technician: lambda s: using(s.one(Job), s.of((None, s.one(Person)))),
    actions.write_hours: hours,
    actions.write_price: price,
    actions.say_declined: words_of_job("declined"),
    actions.hand_over: a_hand_over,
    actions.keep_as_typed: lambda s: using(s.of(("visit 1", "visit 2")), s.of(("slip", "back"))),
    actions.add_person: lambda s: using(s.of(("Ana", "Bo", " Cleo ", ""))),
    actions.person_left: lambda s: using(s.one(Person)),
    who_actions.say_who: lambda s: using(
        s.one(Job), s.of((*DIDS, "sang")), s.of((None, s.one(Person)))
    ),
    who_actions.write_search_hours: search_hours,
    who_actions.choose_work: work,
    odometer_actions.change_odometer: odometer,
    odometer_actions.change_odometer_out: odometer_out,
    odometer_actions.say_how_read: lambda s: using(s.one(Visit), s.of(("read", "told", "dreamt"))),
    odometer_actions.note_vehicle_event: event,
    odometer_actions.strike_vehicle_event: lambda s: using(s.one(VehicleEvent)),
    vehicle_actions.change_vehicle: of_vehicle,
    vehicle_actions.count_in: lambda s: using(s.one(Vehicle), s.of(UNITS)),
    vehicle_actions.say_another_car: lambda s: using(s.one(Visit), refuse_where_judged),
    vehicle_actions.say_one_car: lambda s: using(s.one(Vehicle), s.one(Vehicle)),
    vehicle_actions.say_two_cars: lambda s: using(
        s.one(Visit), s.one(Vehicle), refuse_where_judged
    ),
}
