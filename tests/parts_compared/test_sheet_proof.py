"""The proof of repair on the sheet, as blocks: what is printed and what is never claimed."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.parts_compared.sheet_blocks import Cautions, Listed, NextPage, Title, Words
from desktop_app.parts_compared.sheet_job import sheet_blocks
from desktop_app.parts_compared.sheet_proof import proof_blocks, proof_file_blocks
from desktop_app.parts_compared.stored_proof_asked import proof_asked_by_parts
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs import actions, proof_actions
from desktop_app.repair_jobs.job_view import CheckMade, JobView
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel
from desktop_app.repair_jobs.proof_checks import proof_checks
from desktop_app.repair_jobs.proof_kept import CaughtKept, ProofKept
from desktop_app.repair_jobs.provocation import Provoked, provoked_sentence
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.self_tests_compared import StageTests
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.system_cautions import system_cautions
from desktop_app.repair_jobs.systems import SYSTEMS
from desktop_app.shop_record.record import ShopRecord
from tests.parts_compared.sheet_story import a_job, a_rotor, kinds


@pytest.fixture
def job(shop: ShopRecord) -> JobView:
    """The job J-104: road, told of damp, driven 7.5 miles."""
    made = a_job(shop)
    with shop.reading() as connection:
        return read_job(connection, made)


def still_here(shop: ShopRecord, job: int) -> None:
    """The job before its hand-over: what is proved can still be written down."""
    with shop.deed("Not handed over yet") as deed:
        deed.change(Job, job, left_at=None)


def named(job: JobView, kept: ProofKept) -> dict[str, str]:
    """The customer's paragraphs by their names."""
    return {one.name: one.words for one in proof_blocks(job, kept) if isinstance(one, Words)}


def filed(job: JobView, kept: ProofKept) -> dict[str, str]:
    """The file's paragraphs by their names."""
    return {one.name: one.words for one in proof_file_blocks(job, kept) if isinstance(one, Words)}


def not_proved(job: JobView, kept: ProofKept) -> tuple[str, ...]:
    """What stands under "Not proved"."""
    return next(one.items for one in proof_file_blocks(job, kept) if isinstance(one, Listed))


def test_codes_and_the_cars_own_tests_are_printed_before_and_after(
    shop: ShopRecord, job: JobView
) -> None:
    still_here(shop, job.id)
    actions.write_code(shop, job.id, "P0300", "stored", "found")
    actions.tick_check(shop, job.id, "proof", CODES_READ, "done")
    proof_actions.type_self_tests(shop, job.id, "found", "00 07 65 05")
    proof_actions.type_self_tests(shop, job.id, "after repair", "00 07 65 04")
    sheet = read_sheet(shop, job.id, kinds())
    said = named(sheet.job, sheet.proof)
    assert said["Codes"] == (
        "Before: P0300 stored. After: read again, none is left. "
        "An emission test may refuse the car until its own tests have run."
    )
    assert "Not run: evaporative system." in said["The car's own tests"]
    assert "complete since: catalyst" in said["The car's own tests"]


def test_the_drive_is_printed_with_what_it_is_worth(job: JobView) -> None:
    drive = ProofKept(every=FaultEvery(40, "mi"), provoked=Provoked(37, 10, 0, 10))
    kept = replace(drive, conditions={"damp": True})
    assert named(job, kept)["What was done"] == "Driven 7.5 miles. Wet road, two hills."
    worth = filed(job, kept)["What the drive is worth"]
    assert "7.5 miles without it happen by luck in 83 % of cases" in worth
    assert "decisive" in worth
    assert "Holds if the fault comes at random and the drive had the conditions" in worth
    dry = filed(job, replace(drive, conditions={"damp": False}))["What the drive is worth"]
    assert dry.startswith("Not met on the drive: damp. So the quiet drive says nothing of the")
    assert "by luck in" not in dry.replace(provoked_sentence(Provoked(37, 10, 0, 10)), "")
    unsaid = filed(job, drive)["What the drive is worth"]
    assert unsaid.startswith("Nobody said whether the drive had damp; only if it had, this holds.")
    assert "What the drive is worth" not in filed(job, ProofKept())


def test_same_conditions_is_not_printed_as_reached_where_one_was_not_met(job: JobView) -> None:
    same = replace(job, proof_level=4)
    assert named(same, ProofKept())["Reached"] == (
        "same conditions (4 of 4) was chosen. What is written down does not bear all of it out."
    )
    run = {"after repair": StageTests("00 07 65 00")}
    met = named(same, ProofKept(conditions={"damp": True}, tests=run))  # type: ignore[arg-type]
    assert met["Reached"].endswith("It was driven under the conditions the customer told us of.")


def test_a_test_that_has_not_run_stands_under_not_proved(job: JobView) -> None:
    full = replace(job, proof_level=3)
    waits = ProofKept(tests={"after repair": StageTests("00 17 65 00")})
    not_run = "The car's own test has not run: misfire. Not run is not passed."
    assert not_proved(full, waits)[0] == not_run
    first_page = [one.words for one in proof_blocks(full, waits) if isinstance(one, Words)]
    assert any(not_run in words for words in first_page)
    assert not any("ran and passed" in words for words in first_page)


def test_what_was_caught_here_is_filed_as_a_good_sign(job: JobView) -> None:
    assert not any("Caught" in one.name for one in _lists(job, ProofKept()))
    kept = ProofKept(caught=(CaughtKept(1, "2026-11-12T12:00:00", "Missed again in the wash"),))
    caught = next(one for one in _lists(job, kept) if "Caught" in one.name)
    assert caught.name == "Caught here: a good sign, for the car had not left"
    assert caught.items == ("on 12 November 2026, 12:00: Missed again in the wash.",)
    assert not any("Caught" in words for words in named(job, kept).values())


def _lists(job: JobView, kept: ProofKept) -> list[Listed]:
    return [one for one in proof_file_blocks(job, kept) if isinstance(one, Listed)]


def test_unproven_is_printed(job: JobView) -> None:
    undriven = replace(job, proof_distance=None, proof_words="", checks=())
    unproven = list(proof_blocks(replace(undriven, proof_level=0), ProofKept()))
    words = [one.words for one in unproven if isinstance(one, Words)]
    assert words[:2] == [
        "unproven (0 of 4).",
        "This repair was not proved before the car left. Not said whether tried: damp.",
    ]
    assert not any("Nothing was tried" in one for one in words)  # nobody said so
    driven = named(replace(job, proof_level=0), ProofKept())
    assert driven["Reached"] == "unproven (0 of 4)."
    unsaid = named(replace(job, proof_level=None), ProofKept())
    assert unsaid["Reached"] == "How far this repair is proved has not been said yet."


def test_what_to_watch_for_and_the_window_close_it(job: JobView) -> None:
    said = list(named(job, ProofKept()).items())[-2:]
    assert [name for name, _ in said] == ["What to watch for", "Window"]
    assert "above all: damp" in said[0][1]
    assert said[1][1].startswith("90 days (until 11 February 2027) or 3,000 miles, whichever")


def test_what_the_fitted_parts_ask_for_is_ticked_or_not_proved(shop: ShopRecord) -> None:
    story = a_rotor(shop)
    with shop.reading() as connection:
        asked = proof_asked_by_parts(connection, story.job, kinds())
    assert asked == tuple(one.say for one in kinds()["distributor-rotor"].proof)
    still_here(shop, story.job)
    actions.tick_check(shop, story.job, "proof", asked[0], "done")
    sheet = read_sheet(shop, story.job, kinds())
    blocks = list(proof_file_blocks(sheet.job, sheet.proof, asked))
    done = next(one for one in blocks if isinstance(one, Words) and one.name == "Ticked as done")
    assert "misfire counters at zero for 15 min from cold" in done.words  # the system's wording
    left = next(one for one in blocks if isinstance(one, Listed))
    assert f"Not ticked: {asked[1]}" in left.items
    assert f"Not ticked: {asked[0]}" not in left.items


def test_points_of_closing_up_without_an_answer_stand_in_the_file(shop: ShopRecord) -> None:
    story, rotor = a_rotor(shop), kinds()["distributor-rotor"]
    still_here(shop, story.job)
    first, *others = rotor.refit
    actions.tick_check(shop, story.job, "refit", first.say, "not needed")
    blocks = sheet_blocks(read_sheet(shop, story.job, kinds()))
    file = blocks[next(at for at, one in enumerate(blocks) if isinstance(one, NextPage)) :]
    named = "No answer was given to"
    left = next(one for one in file if isinstance(one, Listed) and one.name == named)
    assert left.items == tuple(f"⚠ {one.say}" if one.hurt else one.say for one in others)
    for one in others:
        actions.tick_check(shop, story.job, "refit", one.say, "done")
    blocks = sheet_blocks(read_sheet(shop, story.job, kinds()))
    assert named not in [one.name for one in blocks if isinstance(one, Listed)]


def test_a_sheet_without_parts_is_named_for_what_it_holds_and_warns_of_the_system(
    shop: ShopRecord,
) -> None:
    made = a_job(shop)
    actions.choose_system(shop, made, "brakes")
    blocks = sheet_blocks(read_sheet(shop, made, kinds()))
    title = next(one for one in blocks if isinstance(one, Title))
    assert title.says == "The repair and its proof · job J-104"
    cautions = next(one for one in blocks if isinstance(one, Cautions)).items
    assert any(one.startswith("Brakes that fail can kill.") for one in cautions)
    assert not any("compares parts" in one for one in cautions)


@pytest.mark.parametrize("system", [one.id for one in SYSTEMS])
def test_a_caution_of_a_system_is_said_in_the_words_of_its_parts(system: str) -> None:
    """Else the sheet of a job with a part would print one caution twice."""
    of_parts = {caution for kind in kinds().values() for caution in kind.cautions}
    without_parts = ("evaporative", "restraints", "air-conditioning")
    for caution in system_cautions(system):
        assert caution in of_parts or system in without_parts


def test_a_wet_road_is_asked_for_where_somebody_told_of_wet(job: JobView) -> None:
    driven = replace(job, system="ignition", proof_level=2, conditions={"hot": True})
    told = replace(driven, conditions={"rain": True})
    asked = "Not ticked: wet road if told wet."
    assert asked not in not_proved(driven, ProofKept())
    assert asked in not_proved(told, ProofKept())


def test_a_drive_is_told_in_the_cars_own_unit_and_not_at_all_where_there_was_none(
    job: JobView,
) -> None:
    for unit, distance, said in (
        ("mi", 7.5, "Driven 7.5 miles. Wet road, two hills."),
        ("km", 12.0, "Driven 12 km. Wet road, two hills."),
        ("km", None, "Wet road, two hills."),
    ):
        car = replace(job.vehicle, odometer_unit=unit)
        driven = replace(job, vehicle=car, proof_distance=distance)
        assert named(driven, ProofKept())["What was done"] == said


def test_where_nothing_is_left_to_say_of_a_proof_the_file_has_no_page_of_it(job: JobView) -> None:
    bare = replace(job, proof_level=None, proof_distance=None, proof_words="", checks=())
    assert [*proof_file_blocks(bare, ProofKept())] == []
    assert "Not proved" in {
        one.name for one in proof_file_blocks(job, ProofKept()) if isinstance(one, Listed)
    }


def test_a_proof_that_leaves_nothing_open_is_filed_without_a_list_of_what_is(job: JobView) -> None:
    asked = proof_checks(job.system)
    one = job.checks[0]
    every = tuple(replace(one, words=words, outcome="done") for words in asked.bay + asked.road)
    done = replace(job, checks=every, proof_level=int(ProofLevel.BAY))
    filed_blocks = [*proof_file_blocks(done, ProofKept())]
    assert not [block for block in filed_blocks if isinstance(block, Listed)]
    assert len(filed(done, ProofKept())["Ticked as done"].split(";")) >= len(asked.bay)


def test_what_was_ticked_is_filed_as_done_though_the_list_asks_for_it_no_more(
    job: JobView,
) -> None:
    done, other = job.checks[0], proof_checks("brakes")
    ticked = (*other.bay, "wet road if told wet", CODES_READ)
    checks = tuple(replace(done, kind="proof", words=one, outcome="done") for one in ticked)
    said = filed(replace(job, conditions={}, checks=checks), ProofKept())["Ticked as done"]
    for words in ticked[:-1]:
        assert words in said
    assert CODES_READ not in said  # it stands under Codes
    untold = replace(job, conditions={}, checks=())
    assert not any("wet road" in one for one in not_proved(untold, ProofKept()))


def test_a_level_that_needs_no_more_words_has_none(job: JobView) -> None:
    """Driven, told of no condition, and of a system that the car has no test of its own for."""
    bare = replace(job, system="charging", conditions={}, proof_level=int(ProofLevel.ROAD))
    said = [block.words for block in proof_blocks(bare, ProofKept()) if isinstance(block, Words)]
    assert said[:2] == [
        *("road (2 of 4). It was driven on the road.", "Driven 7.5 miles. Wet road, two hills."),
    ]


@pytest.mark.parametrize(
    ("met", "ticked", "not_proved_says"),
    [
        ({"damp": True, "rain": True}, "driven under the conditions told of.", ""),
        (
            {"damp": True, "rain": False},
            "driven under the conditions told of (tried: damp; not tried: rain).",
            "",
        ),
        (
            {"rain": False},
            "driven under the conditions told of (not tried: rain; not said whether tried: damp).",
            "",
        ),
        (
            {"damp": False, "rain": False},
            "",
            "Ticked as done, and yet no condition was met: driven under the conditions told of "
            "(not tried: damp, rain).",
        ),
    ],
)
def test_a_ticked_drive_under_the_conditions_says_which_of_them_it_had(
    job: JobView, met: dict[str, bool], ticked: str, not_proved_says: str
) -> None:
    [check] = proof_checks("").road
    told = dict.fromkeys(("damp", "rain"), True)
    made = (CheckMade(1, "proof", check, "done"),)
    wet = replace(job, system="", conditions=told, checks=made)
    kept = ProofKept(conditions=met)
    assert filed(wet, kept).get("Ticked as done", "") == ticked
    assert (not_proved_says in not_proved(wet, kept)) is bool(not_proved_says)
    assert ("Not tried: " in named(wet, kept).get("", "")) is (False in met.values())
