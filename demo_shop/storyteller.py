"""Tells a written job to the record, deed by deed, at the moments when a shop would do it."""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping
from datetime import datetime, time, timedelta
from typing import Any

from demo_shop.car_papers import invented_vin
from demo_shop.job_story import CarEvent, CarStory, JobStory
from demo_shop.people import COUNTER
from demo_shop.shop_calendar import ShopCalendar
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored_pairs import open_origins
from desktop_app.repair_jobs import actions as jobs
from desktop_app.repair_jobs import odometer_actions, proof_actions, who_actions
from desktop_app.repair_jobs.hand_over import open_answers
from desktop_app.repair_jobs.proof_checks import proof_checks
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.who_did_what import Did
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.stored_windows import promise_at_hand_over
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.vocabulary import Vocabulary


class ShopClock:
    """The clock of the demo's record: it shows the moment that is being told."""

    def __init__(self, start: datetime) -> None:
        self.moment = start

    def __call__(self) -> datetime:
        """Return the moment that is being told."""
        return self.moment


class Storyteller:
    """Knows the record being written and which row each car and job of the stories became."""

    def __init__(
        self,
        record: ShopRecord,
        clock: ShopClock,
        calendar: ShopCalendar,
        kinds: Mapping[str, PartKind],
        vocabulary: Vocabulary,
    ) -> None:
        self.record, self.clock, self.calendar = record, clock, calendar
        self.kinds, self.vocabulary = kinds, vocabulary
        self.jobs: dict[str, int] = {}
        self.cars: dict[str, int] = {}
        self.people: dict[str, int] = {}

    def do(self, who: str, deed: Callable[..., Done], *words: Any, **more: Any) -> Done:
        """Let somebody do a deed, half a minute after the one before."""
        self.record.who = who
        self.clock.moment += timedelta(seconds=30)
        return deed(self.record, *words, **more)

    def symptoms(self, concern: str) -> tuple[str, ...]:
        """Return the symptom groups that the words name."""
        return tuple(group.id for group in self.vocabulary.groups_in(concern))

    def heard(self, story: JobStory, car: CarStory, chance: random.Random) -> None:
        """The counter: the car comes, and the concern is written down."""
        if story.same_visit:
            visit = self._job(self.jobs[story.same_visit]).visit_id
            said = self.do(
                COUNTER, jobs.add_job, visit, story.concern, self.symptoms(story.concern)
            )
        else:
            said = self.do(COUNTER, jobs.write_up, self._write_up(story, car, chance))
        assert said.made is not None
        self.jobs[story.key] = said.made
        self.cars[car.key] = self._job(said.made).vehicle.id
        for condition in story.happens:
            self.do(COUNTER, jobs.tick_condition, said.made, condition, True)
        for condition in story.never:
            self.do(COUNTER, jobs.tick_condition, said.made, condition, False)

    def looked(self, story: JobStory) -> None:
        """The bay: codes are read, and what is seen is written down."""
        job, who = self.jobs[story.key], story.technician or COUNTER
        if not self.people:
            with self.record.reading() as connection:
                self.people = {name: person for person, name in people_here(connection)}
        for code in story.codes:
            self.do(who, jobs.write_code, job, code, "stored", "found")
        for code in story.pending:
            self.do(who, jobs.write_code, job, code, "pending", "found")
        for words in story.findings:
            self.do(who, jobs.write_finding, job, words)
        if story.work is not None:
            self.do(COUNTER, who_actions.choose_work, job, story.work)
        if story.system:
            self.do(who, jobs.choose_system, job, story.system)
        if story.technician:
            self.do(who, jobs.choose_technician, job, self.people[story.technician])
        self._name(story, who, "searched", story.searched)
        if story.search_hours is not None:
            self.do(who, who_actions.write_search_hours, job, story.search_hours)

    def mended(self, story: JobStory) -> None:
        """The cause is named, the work written down, and the refit ticked off."""
        job, who = self.jobs[story.key], story.technician
        if story.cause:
            self.do(who, jobs.name_cause, job, story.cause)
        if not story.caught:
            self.do(who, jobs.say_not_caught, job)
        if story.correction:
            self.do(who, jobs.write_correction, job, story.correction)
        fitted = dict.fromkeys(pair.kind for pair in story.pairs if pair.fitted)
        says = [check.say for kind in fitted for check in self.kinds[kind].refit]
        for words in dict.fromkeys(says[: story.refit]):
            self.do(who, jobs.tick_check, job, "refit", words, "done")
        self._name(story, who, "refitted", story.refitted)

    def proved(self, story: JobStory) -> None:
        """The repair is tried out."""
        job, who = self.jobs[story.key], story.technician
        checks = proof_checks(story.system)
        level = story.proof or 0
        ticked = (*checks.bay, *checks.road) if level > 1 else checks.bay if level else ()
        for words in ticked if story.system else ():
            self.do(who, jobs.tick_check, job, "proof", words, "done")
        for code in story.codes_after:
            self.do(who, jobs.write_code, job, code, "pending", "after repair")
        self.do(who, jobs.say_proof, job, story.proof)
        self._name(story, who, "proved", story.proved)
        self.do(who, proof_actions.write_tried, job, story.proof_words)
        self.do(who, proof_actions.write_distance, job, story.proof_distance)

    def handed_over(self, story: JobStory) -> None:
        """The counter again: hours, price, what was declined, and the car leaves."""
        job = self.jobs[story.key]
        self.do(COUNTER, jobs.write_hours, job, story.hours, False)
        if story.unbilled is not None:
            self.do(COUNTER, jobs.write_hours, job, story.unbilled, True)
        self.do(COUNTER, jobs.write_price, job, story.cents)
        self.do(COUNTER, jobs.say_declined, job, story.declined)
        with self.record.reading() as connection:
            answers = open_answers(read_job(connection, job), open_origins(connection, job))
        left_at = self.calendar.at(story.left).isoformat(timespec="seconds")
        missing = tuple(one.words for one in answers)
        about = (job, story.odometer_out, missing, left_at, promise_at_hand_over)
        self.do(COUNTER, jobs.hand_over, *about)

    def told_of(self, event: CarEvent) -> None:
        """The shop is told that something happened to a car."""
        on = self.calendar.day(event.on).isoformat()
        about = (self.cars[event.car], event.kind, on, event.before, event.after, event.note)
        self.do(COUNTER, odometer_actions.note_vehicle_event, *about)

    def bench_moment(self, story: JobStory) -> datetime:
        """Return when old and new were laid side by side: some hours before the car left."""
        came = self.calendar.at(story.came)
        if not story.left:
            return came + timedelta(minutes=75)
        left = self.calendar.at(story.left)
        opened = self.calendar.moment(left.date(), time(8, 0))
        return max(came + (left - came) / 3 if came.date() == left.date() else opened, came)

    def _name(self, story: JobStory, who: str, did: Did, name: str) -> None:
        if name:
            self.do(who, who_actions.say_who, self.jobs[story.key], did, self.people[name])

    def _job(self, job: int) -> Any:
        with self.record.reading() as connection:
            return read_job(connection, job)

    def _write_up(self, story: JobStory, car: CarStory, chance: random.Random) -> WriteUp:
        known = self.cars.get(car.key)
        new_vin = invented_vin(chance, car.decade) if car.has_vin and known is None else ""
        return WriteUp(
            story.concern,
            vehicle_id=known,
            vin=new_vin,
            plate=car.plate,
            description=car.description,
            odometer_unit=car.unit,
            odometer=story.odometer,
            odometer_unread=story.unread,
            customer=story.customer or car.customer,
            phone=f"555-01{chance.randrange(100):02d}" if not story.customer else "",
            brought_by=story.brought_by,
            says_same=story.says_same,
            came_at=self.calendar.at(story.came).isoformat(timespec="seconds"),
            symptoms=self.symptoms(story.concern),
        )
