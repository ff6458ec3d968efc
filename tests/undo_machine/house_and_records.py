"""The deeds that are no job's alone: house rules, the shop's own phrases, an import."""

from __future__ import annotations

from functools import cache

from desktop_app.commands.shop_place import kinds_of
from desktop_app.records_exchanged.bringing_in_actions import bring_in
from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.records_exchanged.row_words import kind_ids
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.repair_jobs.stored import OwnPhrase
from desktop_app.shop_record.house_rules import change_rule, change_rules
from desktop_app.symptom_search import phrase_actions
from desktop_app.symptom_search.stored_shop_words import ShopWords
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.records_exchanged.importing import lines
from tests.records_exchanged.tables import table_of
from tests.undo_machine.at_the_counter import SYMPTOMS
from tests.undo_machine.deeds_to_do import Deeds, Given, Seen, using

RULES = (
    *(("shop_name", "Tin Heron Garage"), ("shop_name", " "), ("shop_name", "\ud83d")),
    *(("length_unit", "inch"), ("early_days", 31), ("early_days", "thirty"), ("window_miles", 0)),
    *(("hour_cost_cents", 7000), ("second_backup_folder", "here"), ("no_such_rule", 1)),
)
WINDOWS = (
    {"window_days": 365, "window_months": 12},
    {"window_days": 30},
    {"window_days": 0, "window_miles": 0},
)
PHRASES = ("it gobbles like a turkey", "makes a racket like a tractor", "", "the car")


@cache
def reads() -> ReadWith:
    """What an import reads words with."""
    words = shop_vocabulary()
    groups = cache(lambda text: tuple(group.id for group in words.groups_in(text)))
    return ReadWith(groups, words.conditions_in, kind_ids(kinds_of().values()))


def words_here(seen: Seen) -> Vocabulary:
    """The vocabulary as the shop has it so far."""
    return ShopWords(seen.record)()


def file(seen: Seen) -> str:
    """A table of one or two jobs, some of which the shop may have already."""
    first = {
        **{"job_number": seen.of(("A1", "A2", "1")), "opened_on": "2024-01-05"},
        **{"closed_on": "2024-01-06", "plate": seen.of(("AB 12", "TIN 01")), "odometer": "50000"},
        **{"odometer_unit": "mi", "technician": "Ana", "concern": "misfires when cold"},
        **{"cause": seen.of(("coil cracked", "plug cracked")), "codes": "P0300", "price": "120.00"},
        **{"part_kind": "ignition coil", "part_number": "C-1"},
    }
    back = {
        **{"job_number": "A9", "opened_on": "2024-01-15", "closed_on": seen.of(("", "2024-01-16"))},
        **{"plate": "ab12", "concern": "misfires again", "return_of": "A1"},
        **{"judgement": seen.of(("same symptom", "", "odd"))},
    }
    return lines(first, back) if seen.yes() else lines(first)


def brought_in(seen: Seen) -> Given:
    """Bring a table in as the window does, or try it."""
    return using(table_of(file(seen)), reads, lambda _step: None, dry_run=seen.of((False, True)))


def imported(seen: Seen) -> Given:
    """Bring rows in, or try it."""
    return using(table_of(file(seen)), "jobs.csv", reads(), dry_run=seen.of((False, True)))


def another_meaning(seen: Seen) -> Given:
    """Let one of the shop's phrases mean something else."""
    phrase = seen.one(OwnPhrase)
    shown = seen.shown(OwnPhrase, phrase, "symptom")
    return using(words_here(seen), phrase, seen.of((*SYMPTOMS, "none such")), shown)


DEEDS: Deeds = {
    change_rule: lambda s: using(*s.of(RULES)),
    change_rules: lambda s: using("Change the shop's window", s.of(WINDOWS)),
    phrase_actions.add_phrase: lambda s: using(
        words_here(s), s.of(PHRASES), s.of((*SYMPTOMS, "none such"))
    ),
    phrase_actions.change_phrase: another_meaning,
    phrase_actions.take_phrase_away: lambda s: using(s.one(OwnPhrase)),
    import_rows: imported,
    bring_in: brought_in,
}
