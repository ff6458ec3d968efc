"""What the places need, made ready beside the window before anybody goes there.

The first look at a place would else wait for what Python and SQLAlchemy do once: loading the
place's modules, and making SQL of what is asked of the record.
"""

from __future__ import annotations

import importlib
from collections.abc import Mapping
from contextlib import suppress
from datetime import date
from typing import TYPE_CHECKING

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.vocabulary import Vocabulary

if TYPE_CHECKING:
    from desktop_app.repair_jobs.rate_of_use import ShopUse

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


def read_newest_job(record: ShopRecord, today: date, names: Mapping[str, str]) -> ShopUse | None:
    """Ask the newest job what a job's page asks; return what it asks of the whole shop.

    What can't be read of it is told to whoever opens it, and stops nothing here.
    """
    from desktop_app.repair_jobs.stored_odometer import read_shop_use
    from desktop_app.repair_jobs.stored_proof import read_proof
    from desktop_app.repair_jobs.stored_reading import read_job
    from desktop_app.returns_watched.stored_returns import read_returns_of_job
    from desktop_app.returns_watched.stored_standing import read_standing
    from desktop_app.symptom_search.stored import jobs_latest

    use = None
    with suppress(ShopTrouble), record.reading() as connection:
        for job in jobs_latest(connection, 1):
            read_job(connection, job)
            use = read_shop_use(connection)
            read_proof(connection, job, use)
            read_returns_of_job(connection, job, names)
            read_standing(connection, job, today, names)
    return use
