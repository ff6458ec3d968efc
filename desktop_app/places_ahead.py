"""What the places need, made ready beside the window before anybody goes there.

The first look at a place would else wait for what Python and SQLAlchemy do once: loading the
place's modules, and making SQL of what is asked of the record.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable, Mapping
from contextlib import suppress
from datetime import date
from typing import TYPE_CHECKING, Any

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.vocabulary import Vocabulary

if TYPE_CHECKING:
    from desktop_app.parts_compared.part_kinds.part_kind import PartKind
    from desktop_app.repair_jobs.rate_of_use import ShopUse

Ask = Callable[..., Any]  # what is asked of the record, and about what

_UNHEARD_OF = "zzwqk"  # no phrase has this word: what finds slips is made with the first of them


def load_job_page() -> None:
    """Load what taking a car in and a job's page are made of: mostly these are wanted first."""
    importlib.import_module("desktop_app.repair_jobs.screen.write_up_page")
    importlib.import_module("desktop_app.returns_watched.screen.promise_line")
    importlib.import_module("desktop_app.returns_watched.screen.job_place")
    importlib.import_module("desktop_app.repair_jobs.screen.job_page")
    importlib.import_module("desktop_app.part_photos.screen.vin_offer")
    importlib.import_module("desktop_app.repair_jobs.screen.heard_section")
    importlib.import_module("desktop_app.repair_jobs.screen.found_section")
    importlib.import_module("desktop_app.parts_compared.screen.old_and_new_section")
    importlib.import_module("desktop_app.repair_jobs.screen.back_on_section")
    importlib.import_module("desktop_app.repair_jobs.screen.proof_section")
    importlib.import_module("desktop_app.repair_jobs.screen.gone_section")
    importlib.import_module("desktop_app.returns_watched.screen.watch_section")


def load_other_places() -> None:
    """Load what the other places are made of."""
    importlib.import_module("desktop_app.returns_watched.screen.its_back_page")
    importlib.import_module("desktop_app.returns_watched.screen.under_watch_page")
    importlib.import_module("desktop_app.weekly_report.screen.monday_book_page")
    importlib.import_module("desktop_app.parts_compared.screen.part_kinds_page")
    importlib.import_module("desktop_app.parts_compared.screen.tool_drawer_page")
    importlib.import_module("desktop_app.part_photos.screen.bench_card_page")
    importlib.import_module("desktop_app.records_place")
    importlib.import_module("desktop_app.rules_places")


def read_a_slip(vocabulary: Vocabulary) -> None:
    """Let the vocabulary be ready for words with a slip."""
    vocabulary.groups_in(_UNHEARD_OF)
    vocabulary.conditions_in(_UNHEARD_OF)


def read_newest_job(
    record: ShopRecord, today: date, names: Mapping[str, str], kinds: Mapping[str, PartKind]
) -> ShopUse | None:
    """Ask the newest job what its page asks, and what a return asks; return how the cars are used.

    What can't be read of it is told to whoever opens it, and stops nothing here.
    """
    from desktop_app.parts_compared.stored_pairs import job_of_newest_pair
    from desktop_app.repair_jobs.stored_odometer import read_shop_use
    from desktop_app.symptom_search.stored import jobs_latest

    use = None

    def ask(read: Callable[..., Any], *about: Any) -> Any:
        with record.reading() as connection:
            return read(connection, *about)

    with suppress(ShopTrouble), record.one_look():
        for job in ask(jobs_latest, 1):
            use = ask(read_shop_use)
            _ask_as_a_job(ask, job, use, today)
            _ask_as_the_watch(ask, job, today, names)
            with_pair = ask(job_of_newest_pair) or job
            _ask_of_its_parts(ask, with_pair, kinds)
            _ask_as_a_return(ask, with_pair, kinds)
    return use


def _ask_as_a_job(ask: Ask, job: int, use: ShopUse, today: date) -> None:
    from desktop_app.repair_jobs.stored_known_car import jobs_beside
    from desktop_app.repair_jobs.stored_proof import read_proof
    from desktop_app.repair_jobs.stored_questions import read_odometer_said
    from desktop_app.repair_jobs.stored_reading import events_of, jobs_of_visit, read_job
    from desktop_app.repair_jobs.stored_same_plate import same_plate_asked

    read = ask(read_job, job)
    ask(read_proof, job, use)
    ask(jobs_of_visit, read.visit_id)
    ask(jobs_beside, read.vehicle.id, read.visit_id)
    ask(same_plate_asked, read)
    ask(read_odometer_said, read, today, use)
    ask(events_of, read.vehicle.id)


def _ask_as_the_watch(ask: Ask, job: int, today: date, names: Mapping[str, str]) -> None:
    from desktop_app.returns_watched.stored_customers_asked import answers_of_job
    from desktop_app.returns_watched.stored_money_owed import owed_for_job, parts_of_job
    from desktop_app.returns_watched.stored_returns import read_returns_of_job
    from desktop_app.returns_watched.stored_standing import read_standing

    ask(read_returns_of_job, job, names)
    ask(read_standing, job, today, names)
    ask(answers_of_job, job)
    ask(parts_of_job, job)
    ask(owed_for_job, job)


def _ask_of_its_parts(ask: Ask, job: int, kinds: Mapping[str, PartKind]) -> None:
    from desktop_app.parts_compared.stored_pairs import drawer, open_origins, pairs_of_job
    from desktop_app.parts_compared.stored_refit import refit_checks_for, replaced_in
    from desktop_app.parts_compared.stored_sets import part_sets
    from desktop_app.parts_compared.stored_sums import sums_of_job
    from desktop_app.symptom_search.stored import mended_by

    ask(pairs_of_job, job)
    ask(open_origins, job)
    ask(drawer)
    part_sets()  # read once from the program's own files
    ask(sums_of_job, job)
    ask(replaced_in, job, kinds)
    ask(refit_checks_for, job, kinds)
    ask(mended_by, [job])


def _ask_as_a_return(ask: Ask, job: int, kinds: Mapping[str, PartKind]) -> None:
    """Ask of a job what is asked of the two of a return, as if it had come back after itself."""
    from desktop_app.returns_watched.stored_judging import read_judging
    from desktop_app.returns_watched.stored_then_now import read_chain, read_one, read_then_and_now

    ask(read_then_and_now, job, job, kinds)  # of one job no more than whether it is there
    ask(read_one, job, kinds)
    ask(read_judging, job, job)
    ask(read_chain, job, job)
