"""A shop that has a row of everything, built once and copied: no deed lacks what it is about."""

from __future__ import annotations

import tempfile
from datetime import datetime, timedelta
from functools import cache
from pathlib import Path

from desktop_app.commands.shop_place import new_place
from desktop_app.part_photos import card_actions, mark_actions, overlay_actions
from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.parts_compared import actions as parts
from desktop_app.parts_compared import gauge_actions, kind_actions, sum_actions
from desktop_app.parts_compared.photo_reading_actions import take_reading_from_mark
from desktop_app.repair_jobs import actions, odometer_actions, proof_actions
from desktop_app.repair_jobs.proof_steps import STEP_IDS
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched import customer_actions, money_owed_actions, told_actions
from desktop_app.returns_watched.actions import judge_return, say_not_same_vehicle
from desktop_app.returns_watched.judging_actions import look_again
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.phrase_actions import add_phrase
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.conftest import NOON
from tests.servers import copy_shop, share
from tests.undo_machine.at_the_counter import SYMPTOMS
from tests.undo_machine.old_and_new import a_sum, built_in
from tests.undo_machine.photo_bench import ALIGNED, POINTS, SHADES, SPOTS, content, layout, scale
from tests.watched_shop import as_made


class WallClock:
    """A clock that goes on only when somebody says so."""

    def __init__(self, now: datetime = NOON) -> None:
        self.now = now

    def __call__(self) -> datetime:
        return self.now

    def go_on(self, days: int) -> None:
        """Let days go by."""
        self.now += timedelta(days=days)


def put_furnished_shop(to: Path) -> None:
    """Put a copy of the furnished shop into a folder that is not there yet."""
    copy_shop(Path(_built().name) / "shop", to)


@cache
def _built() -> tempfile.TemporaryDirectory[str]:
    folder = tempfile.TemporaryDirectory()
    clock = WallClock(NOON - timedelta(days=60))
    record = new_place(Path(folder.name) / "shop", clock)
    record.who = "Ana"
    _people_and_tools(record)
    jobs = _jobs(record, clock)
    _bench(record, jobs[0])
    _returns(record, jobs, clock)
    record.close()
    share(record.folder)
    return folder


def _people_and_tools(record: ShopRecord) -> None:
    """Two people, an instrument with a study that is in use and one that is not, a kind of ours."""
    for name in ("Ana", "Bo"):
        actions.add_person(record, name)
    tool = as_made(parts.keep_instrument(record, "calliper 2", "mm", 0.01, 0.02))
    for about in ("a rotor", "a cap"):
        study = as_made(gauge_actions.begin_study(record, tool, about, ("Ana", 1, 1), 12.01))
        for trial in range(2, 12):
            gauge_actions.add_reading(record, study, ("Ana", 1, trial), 12.01 + trial % 3 / 100)
    gauge_actions.use_from_now_on(record, study)
    kind_actions.keep_own_kind(record, built_in()["brake-pads"])
    add_phrase(record, shop_vocabulary(), "it gobbles like a turkey", SYMPTOMS[0])


def _jobs(record: ShopRecord, clock: WallClock) -> list[int]:
    """Three visits of one car, and two of another, which is here now with two jobs."""
    made = []
    for number, known in enumerate((None, 1, 1, None, 2)):
        here = number == 4
        said = WriteUp(
            concern="misfires when cold",
            vehicle_id=known,
            plate="TIN 01" if number < 3 else "TIN 02",
            odometer=50_000 + 400 * number,
            symptoms=SYMPTOMS[:2],
            conditions=("cold",) if number else (),
        )
        job = as_made(actions.write_up(record, said))
        actions.write_code(record, job, "P0300", "stored", "found")
        actions.write_finding(record, job, "tip burned back")
        proof_actions.tick_step(record, job, min(STEP_IDS), done=True)
        if not here:
            clock.go_on(1)
            actions.hand_over(record, job)
            clock.go_on(9)
        made.append(job)
    actions.say_not_caught(record, as_made(actions.add_job(record, 5, "brakes squeal")))
    proof_actions.catch_here(record, job, "came again on the hill")
    odometer_actions.note_vehicle_event(record, 1, "sold", clock().date().isoformat())
    return made


def _bench(record: ShopRecord, job: int) -> None:
    rotor = built_in()["distributor-rotor"]
    pair = as_made(parts.lay_side_by_side(record, job, rotor.id))
    parts.lay_side_by_side(record, job, "distributor-cap")
    taken = [take_in(record, Arrival(f"{one}.png", content=content(one))) for one in SHADES[:3]]
    old = as_made(add_photos(record, job, taken))
    parts.show_in_pair(record, pair, [old], "removed", "top")
    parts.show_in_pair(record, pair, [old + 1], "replacement", "top")
    card = as_made(card_actions.note_printed_card(record, layout("a4")))
    card_actions.note_printed_card(record, layout("a4"))
    mark_actions.keep_scale(record, old, scale(), card)
    for kind, points in POINTS.items():
        drawn = Mark(kind, SPOTS[:points])
        made = as_made(mark_actions.draw_mark(record, old, drawn, height_known=True))
        if kind == "length":
            tip = rotor.dimension("tip-radius")
            assert tip is not None
            take_reading_from_mark(record, pair, tip, "removed", made)
            parts.write_readings(record, pair, tip, "replacement", "33.97; 33.98")
    overlay_actions.keep_overlay(record, old, old + 1, ALIGNED[0])
    parts.see_condition(record, pair, "removed", "burned tip", seen=True)
    sum_actions.keep_sum(record, job, "road-test-worth", a_sum())
    money_owed_actions.write_owed(record, pair, "core", 1500)


def _returns(record: ShopRecord, jobs: list[int], clock: WallClock) -> None:
    """A return that two have looked at, one that one has, one that is of two cars, and two told."""
    first, second, third = jobs[:3]
    judge_return(record, first, second, "same symptom")
    record.who = "Bo"
    look_again(record, first, second)
    record.who = "Ana"
    judge_return(record, second, third, "same part", cause_class="wrong-part")
    say_not_same_vehicle(record, first, third)
    clock.go_on(20)
    asked = as_made(customer_actions.note_answer(record, third, "same trouble"))
    told_actions.judge_told(record, third, asked, "same part")
    customer_actions.note_answer(record, second, "fine")
