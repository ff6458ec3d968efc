"""Builds the demo shop: all its stories told to an empty record, in the order of their moments."""

from __future__ import annotations

import random
import shutil
from collections.abc import Callable, Generator, Iterable, Iterator
from contextlib import nullcontext
from datetime import datetime, time, timedelta
from functools import partial
from pathlib import Path

from demo_shop import demo_marker
from demo_shop.bench_story import BenchStory, photo_orders
from demo_shop.darkroom import HELPERS, Darkroom
from demo_shop.follow_teller import followed, own_window, promise_by_kind
from demo_shop.job_story import JobStory
from demo_shop.odometers_told import tell_odometer
from demo_shop.people import DRAWER, OWNER, PEOPLE, SHOP_NAME
from demo_shop.plain_asked import plain_asked
from demo_shop.plain_jobs import DAYS_BACK, PlainYears, workday
from demo_shop.plain_judged import DAYS_UNTIL_DONE
from demo_shop.plain_record import PlainRecord
from demo_shop.proof_teller import proof_told
from demo_shop.shop_calendar import ShopCalendar
from demo_shop.storyteller import ShopClock, Storyteller
from demo_shop.tried_out import STUDY_OF, try_calliper_out
from demo_shop.written_cars import CARS, EVENTS
from demo_shop.written_jobs import JOBS
from desktop_app.parts_compared.actions import keep_instrument
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.repair_jobs.actions import add_person
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import create_shop
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.step import Step
from desktop_app.symptom_search.stored_index import JobIndex
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

SEED = 1042


# One thing that happens: when, and what; it may yield in between, so that it can be stopped.
Happening = tuple[datetime, Callable[[], Iterable[None] | None]]


def build_demo(
    folder: Path, now: datetime, *, photos: bool = True, seed: int = SEED, helpers: int = HELPERS
) -> Generator[Step, None, None]:
    """Fill an empty or new folder with the demo shop as of the aware moment `now`.

    Yields a Step after each piece. Photos are drawn by `helpers` processes (0: in this one).
    The same seed and day give the same shop. Raises ShopTrouble where the folder isn't empty; when
    it is stopped or fails, what it had made is taken away again.
    """
    calendar = ShopCalendar(now)
    started = calendar.moment(calendar.today - timedelta(days=DAYS_BACK + 5), time(7, 30))
    clock = ShopClock(started)
    kinds = load_kinds([resource_path("part_kinds")]).kinds
    record = create_shop(folder, clock)
    whole = False
    try:
        with Darkroom(helpers) if photos else nullcontext() as darkroom:
            teller = Storyteller(record, clock, calendar, kinds, shop_vocabulary())
            _furnish(teller)
            bench = BenchStory(teller, darkroom, seed)
            happenings = [*_written(teller, bench, seed), *_plain(teller, seed)]
            happenings.sort(key=lambda one: one[0])
            ordered = _order_photos(teller, darkroom, seed)
            yield from _tell(clock, happenings, ordered)
        index = JobIndex(kinds)
        with record.deed("Write the search index") as deed:
            index.rebuild(deed.connection)
        demo_marker.write_marker(folder, demo_marker.DemoMarker(seed, calendar.today))
        whole = True
    finally:
        record.close()
        if not whole:
            _take_away(folder)


def _furnish(teller: Storyteller) -> None:
    """Write down the shop's name, its promises, its people and the tools in its drawer."""
    today = teller.calendar.today
    teller.do(OWNER, change_rule, "shop_name", SHOP_NAME)
    promise_by_kind(teller)
    for name in PEOPLE:
        teller.do(OWNER, add_person, name)
    for tool in DRAWER:
        checked = (today - timedelta(days=tool.checked_days_ago)).isoformat()
        figures = (tool.unit, tool.resolution, tool.max_error, checked)
        kept = teller.do(OWNER, keep_instrument, tool.name, *figures)
        if tool.name == STUDY_OF and kept.made is not None:
            try_calliper_out(teller, kept.made)


def _order_photos(teller: Storyteller, darkroom: Darkroom | None, seed: int) -> int:
    if darkroom is None:
        return 0
    count = 0
    for story in sorted(JOBS, key=lambda story: teller.calendar.at(story.came)):
        for _, order in photo_orders(story, teller.bench_moment(story), seed):
            darkroom.take(order)
            count += 1
    return count


def _written(teller: Storyteller, bench: BenchStory, seed: int) -> Iterator[Happening]:
    """Give the written jobs, returns and events, each phase at its own moment."""
    chance = random.Random(seed)
    cars = {car.key: car for car in CARS}
    at = teller.calendar.at
    for story in sorted(JOBS, key=lambda story: at(story.came)):
        yield at(story.came), partial(teller.heard, story, cars[story.car], chance)
        yield from _worked_on(teller, bench, story)
    for event in EVENTS:
        yield at(event.told), partial(teller.told_of, event)
    yield from followed(teller)


def _worked_on(teller: Storyteller, bench: BenchStory, story: JobStory) -> Iterator[Happening]:
    laid_out = teller.bench_moment(story)
    came = teller.calendar.at(story.came)
    yield came + timedelta(minutes=2), partial(tell_odometer, teller, story.key)
    yield came + timedelta(minutes=4), partial(teller.looked, story)
    yield from proof_told(teller, story)
    if story.pairs:
        yield laid_out, partial(bench.tell, story, laid_out)
    if story.left:
        left = teller.calendar.at(story.left)
        yield left - timedelta(minutes=14), partial(teller.mended, story)
        yield left - timedelta(minutes=8), partial(teller.proved, story)
        yield left - timedelta(minutes=5), partial(own_window, teller, story.key)
        yield left - timedelta(minutes=4), partial(teller.handed_over, story)


def _plain(teller: Storyteller, seed: int) -> Iterator[Happening]:
    with teller.record.reading() as connection:
        people = {name: row for row, name in people_here(connection)}
    jobs = PlainYears(seed + 2, teller.calendar).jobs()
    writer = PlainRecord(teller, people, jobs, seed + 1)
    for job in jobs:
        yield job.left, partial(writer.write, job)
        if job.judged:
            yield job.left + timedelta(minutes=10), partial(writer.judge, job)
            done = workday(job.left + timedelta(days=DAYS_UNTIL_DONE))
            if job.back_of is not None and done.date() < teller.calendar.today:
                yield done, partial(writer.changed, job)
    for asked in plain_asked(jobs, seed + 3, teller.calendar):
        yield asked.at, partial(writer.asked, asked)


def _tell(
    clock: ShopClock, happenings: list[Happening], photos: int
) -> Generator[Step, None, None]:
    of, done = len(happenings) + photos, 0
    for moment, happen in happenings:
        clock.moment = max(moment, clock.moment)
        for _ in happen() or ():
            done += 1
            yield Step(done, of, "Drawing photos")
        done += 1
        yield Step(done, of, f"Writing {moment:%B %Y}")


def _take_away(folder: Path) -> None:
    """Remove what was made in a folder that was empty before."""
    for name in (FILE_NAME, f"{FILE_NAME}-journal", demo_marker.FILE_NAME):
        (folder / name).unlink(missing_ok=True)
    shutil.rmtree(folder / "photos", ignore_errors=True)
