"""How well the right past jobs are found, against plain full-text search on the same jobs."""

from __future__ import annotations

from collections.abc import Sequence
from math import log2
from random import Random
from time import perf_counter

from sqlalchemy import text as sql

from desktop_app.commands.shop_place import follow
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.question import read_question
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from desktop_app.symptom_search.word_forms import tokens
from tests.symptom_search.asked_sentences import asked_sentences
from tests.symptom_search.conftest import OldJobs

# Each sentence is told by several people, each with words of their own around it.
BEFORE = ("", "customer says", "hi there,", "second visit:", "wife told me that")
AFTER = ("", "since last week", "please look at it", "worse every day", "gets on my nerves")
BESIDES = ("annual service and oil filter", "fit the roof rack", "quote for a new windscreen")
TELLERS = 5
MOST, DEEP = 10, 20


def test_the_right_jobs_are_found_first(shop: ShopRecord) -> None:
    words, kinds = shop_vocabulary(), load_kinds([resource_path("part_kinds")]).kinds
    follow(shop)
    jobs = OldJobs(shop, words, kinds)
    about = _history(jobs)
    unseen = [one for one in asked_sentences() if not one.tune]
    ours, plain = [], []
    for one in unseen:
        right = {number for number, means in about.items() if means & one.means}
        if right:
            ours.append(_marks(jobs.numbers(one.text), right))
            plain.append(_marks(_plain_search(shop, one.text), right))
    (ndcg, recall), (plain_ndcg, plain_recall) = _means(ours), _means(plain)
    print(f"\n{len(ours)} questions over {len(about)} jobs:")
    print(f"nDCG at {MOST}: {ndcg:.3f}, plain full text {plain_ndcg:.3f}")
    print(f"recall at {DEEP}: {recall:.3f}, plain full text {plain_recall:.3f}")
    assert ndcg > plain_ndcg
    assert recall > plain_recall


def test_reading_a_question_costs_little() -> None:
    words, kinds = shop_vocabulary(), load_kinds([resource_path("part_kinds")]).kinds
    said = "steering wheel shakes realy bad when braking from sixty and the heater blows cold air"
    said += ", misses uphill in the rain P0300"
    reading, splitting = [], []
    for _ in range(50):
        start = perf_counter()
        read_question(said, words, kinds)
        reading.append(perf_counter() - start)
        start = perf_counter()
        tokens(said)
        splitting.append(perf_counter() - start)
    ratio = min(reading) / min(splitting)
    print(f"\nreading {len(said.split())} words: {1000 * min(reading):.2f} ms (goal 2), ", end="")
    print(f"{ratio:.0f} times the splitting into words")
    assert ratio < 200


def _history(jobs: OldJobs) -> dict[str, frozenset[str]]:
    """Write jobs in wordings that aren't the vocabulary's; return what each is about, by number."""
    chance = Random(5)
    sentences = [(one.text, one.means) for one in asked_sentences() if one.tune] * TELLERS
    sentences += [(besides, frozenset()) for besides in BESIDES] * TELLERS * 10
    chance.shuffle(sentences)
    car = jobs.car(plate="AB 12 CDE")
    about: dict[str, frozenset[str]] = {}
    for number, (said, means) in enumerate(sentences, 1):
        concern = f"{chance.choice(BEFORE)} {said} {chance.choice(AFTER)}".strip()
        jobs.job(concern, car=car, cause="Found and shown.", correction="Put right.")
        about[f"J-{number:03}"] = means
    return about


def _plain_search(shop: ShopRecord, said: str) -> list[str]:
    """Return what FTS5 alone finds: all words ORed, by BM25."""
    ored = " OR ".join(f'"{token.word}"' for token in tokens(said))
    found = "SELECT rowid FROM job_text WHERE job_text MATCH :words ORDER BY rank LIMIT :most"
    numbers = "SELECT number FROM job WHERE id = :id"
    with shop.reading() as connection:
        ids = [row[0] for row in connection.execute(sql(found), {"words": ored, "most": DEEP})]
        return [connection.execute(sql(numbers), {"id": one}).scalar_one() for one in ids]


def _marks(found: Sequence[str], right: set[str]) -> tuple[float, float]:
    """Return nDCG (Järvelin and Kekäläinen, ACM TOIS 20, 2002; gain 1 or 0) and recall."""
    gain = sum(1 / log2(i + 2) for i, one in enumerate(found[:MOST]) if one in right)
    ideal = sum(1 / log2(i + 2) for i in range(min(MOST, len(right))))
    recall = len(right.intersection(found[:DEEP])) / min(DEEP, len(right))
    return gain / ideal, recall


def _means(marks: Sequence[tuple[float, float]]) -> tuple[float, float]:
    first, second = zip(*marks, strict=True)
    return sum(first) / len(marks), sum(second) / len(marks)
