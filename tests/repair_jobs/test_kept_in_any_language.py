"""What the record keeps is the same in every language; only what is shown is translated."""

from __future__ import annotations

import pytest

from desktop_app.language import as_kept, as_shown, as_written, tr
from desktop_app.repair_jobs import actions, odometer_actions
from desktop_app.repair_jobs.concern_conditions import condition_as_written, condition_words
from desktop_app.repair_jobs.our_words import (
    NOTHING,
    UNREAD_REASONS,
)
from desktop_app.repair_jobs.proof_checks import check_words, proof_checks
from desktop_app.repair_jobs.provocation import Provoked, read_provoked
from desktop_app.repair_jobs.stored_questions import odometer_still_asked
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.systems import SYSTEMS, system_id, system_name
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.question import Question
from desktop_app.shop_record.record import ShopRecord
from tests.another_language import another_language


def odd_job(shop: ShopRecord) -> int:
    """A car that comes again with a digit less on its odometer."""
    actions.write_up(shop, WriteUp("squeals", plate="4821 CT", odometer=118_420))
    done = actions.write_up(shop, WriteUp("again", vehicle_id=1, odometer=11_842))
    assert done.made is not None
    return done.made


def asked(shop: ShopRecord, job_id: int) -> Question | None:
    with shop.reading() as connection:
        job = read_job(connection, job_id)
        return odometer_still_asked(connection, job, shop.clock().date())


def test_a_question_answered_in_one_language_is_answered_in_every_one(shop: ShopRecord) -> None:
    job = odd_job(shop)
    in_english = asked(shop, job)
    with another_language():
        question = asked(shop, job)
        assert question is not None
        assert question.startswith("«")
        assert question.kept == in_english
        actions.keep_as_typed(shop, "visit:2:odometer", question)
        assert asked(shop, job) is None
    assert asked(shop, job) is None


def test_a_text_can_be_had_as_it_is_written() -> None:
    with another_language():
        with as_written():
            assert tr("Once in {number}", number=4) == "Once in 4"
        assert tr("Once in {number}", number=4) == "«Once in 4»"


@pytest.mark.parametrize("ours", [NOTHING, *UNREAD_REASONS])
def test_words_of_our_own_are_shown_in_the_language_and_kept_as_they_were(ours: str) -> None:
    with another_language():
        words = (NOTHING, *UNREAD_REASONS)
        assert as_shown(ours, words) == f"«{ours}»"
        assert as_kept(f" «{ours}» ", words) == ours
        assert as_shown("key at the owner's", words) == "key at the owner's"
        assert as_kept("key at the owner's", words) == "key at the owner's"


def test_a_check_is_shown_in_the_language_and_asked_for_as_it_is_kept() -> None:
    (first, *_) = proof_checks("brakes").bay
    with another_language():
        assert proof_checks("brakes").bay[0] == first
        assert check_words(first) == f"«{first}»"


def test_a_system_is_known_by_its_names_in_every_language() -> None:
    with another_language():
        assert system_name("brakes") == "«Brakes»"
        assert all(system_id(system.written) == system.id for system in SYSTEMS)


def test_a_condition_is_searched_by_its_words_as_they_are_written() -> None:
    with another_language():
        assert condition_words("full-lock") == "«on full lock»"
        assert condition_as_written("full-lock") == "on full lock"


def test_a_count_on_purpose_is_read_again_in_every_language() -> None:
    counted = Provoked(37, 10.0, 0, 10.0)
    with another_language():
        assert counted.typed() == "37 in 10 min, then 0 in 10 min"
        assert read_provoked(counted.typed()) == counted


def test_an_event_of_a_car_is_kept_as_it_is_written(shop: ShopRecord) -> None:
    odd_job(shop)
    with another_language():
        done = odometer_actions.note_vehicle_event(shop, 1, "sold", "2026-03-02")
        assert done.words == "«Note: «sold»»"
        assert [tr(kind) for kind in odometer_actions.EVENT_KINDS] == [
            "«odometer replaced»",
            "«sold»",
        ]
