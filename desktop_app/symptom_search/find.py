"""Finding: a text in, the past jobs that are about it out, with what fixed it before."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from operator import itemgetter

from desktop_app.parts_compared.part_kinds.part_kind import Called
from desktop_app.repair_jobs.trouble_code import code_book
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search import stored, stored_led_there
from desktop_app.symptom_search.filters import ALL_JOBS, Filters
from desktop_app.symptom_search.fixes import Fix, name_fix
from desktop_app.symptom_search.found import Found, Hit
from desktop_app.symptom_search.led_there import LedThere, count_led
from desktop_app.symptom_search.points import UNIT
from desktop_app.symptom_search.question import Piece, Question, read_question
from desktop_app.symptom_search.reasons import NO_REASONS, ReasonFinder, Reasons
from desktop_app.symptom_search.stored_ask_index import index_of
from desktop_app.symptom_search.stored_evidence import Named, read_names
from desktop_app.symptom_search.stored_newest import newest_part
from desktop_app.symptom_search.stored_words import WordsKept
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.word_index import entry
from desktop_app.symptom_search.word_index.asked import Asked, Kept
from desktop_app.symptom_search.word_index.counting import (
    FixCounted,
    about_the_same,
    commonest_fixes,
    count_repairs,
)
from desktop_app.symptom_search.word_index.scoring import Best, best_of, score
from desktop_app.symptom_search.word_index.seen_evidence import evidence_of
from desktop_app.symptom_search.word_index.word_ways import Known, KnownInParts, asked_words

__all__ = ["Found", "Hit", "find", "open_page", "vehicle_classes", "what_led_there"]


def find(
    record: ShopRecord,
    vocabulary: Vocabulary,
    kinds: Mapping[str, Called],
    text: str,
    limit: int = 20,
    kept: Filters = ALL_JOBS,
) -> Found:
    """Find the past jobs that a text is about, the best first, and what fixed them.

    Whatever is typed can be asked; what means nothing finds nothing. Jobs that `kept` keeps out
    are neither found nor counted.
    """
    question = read_question(text, vocabulary, kinds)
    plain = _plain(question, vocabulary)
    with record.reading() as connection:
        named = read_names(connection, question.names)
        asked = _asked(question, named, plain, kept, record.clock().date().toordinal())
        words = [word for word in question.words if word.place not in named.places]
        parts = index_of(record).parts(connection)
        known: Known = WordsKept(connection) if parts is None else KnownInParts(parts)
        asked = asked._replace(words=asked_words(words, known))
        from_all = parts is not None
        scored = [score(part, asked) for part in parts or [newest_part(connection, asked, limit)]]
        chosen = best_of(scored, asked.today, limit)
        seen = stored.jobs_seen(connection, [one.job for one in chosen])
        about = about_the_same(asked, scored)
        counted = commonest_fixes(about, asked.today)
        mended = stored.mended_by(connection, [one.newest for one in counted])
    names = {kind.id: kind.name for kind in kinds.values()}
    finder = ReasonFinder(asked.words, plain, names)
    hits = _hits(finder, asked, named, chosen, seen)
    return Found(
        text=text,
        read_as=_pieces(question, named),
        hits=tuple(hit for hit, is_weak in hits if not is_weak),
        weak=tuple(hit for hit, is_weak in hits if is_weak),
        fixes=_fixes(counted, mended, kinds),
        counted=count_repairs(about),
        of_all=from_all,
    )


def what_led_there(record: ShopRecord, jobs: Iterable[int], most: int = 6) -> LedThere:
    """Return what was looked at first in these jobs and the codes found, the commonest first.

    It reads all the jobs handed in: ask it beside the window.
    """
    with record.reading() as connection:
        looked, codes = stored_led_there.read_led(connection, jobs)
    return count_led(looked, codes, most)


def vehicle_classes(record: ShopRecord, most: int = 40) -> tuple[str, ...]:
    """Return the classes of vehicles that this shop has seen, the commonest first."""
    with record.reading() as connection:
        return stored.vehicle_classes(connection, most)


def open_page(record: ShopRecord, most: int = 30) -> tuple[tuple[Hit, ...], tuple[Hit, ...]]:
    """Return what an empty field shows: the jobs of the cars that are here, and the latest jobs."""
    with record.reading() as connection:
        here = stored.jobs_here_now(connection, most)
        latest = [job for job in stored.jobs_latest(connection, most) if job not in set(here)]
        seen = stored.jobs_seen(connection, here + latest)
    return (
        tuple(_hit(seen[job], 0.0, NO_REASONS) for job in here if job in seen),
        tuple(_hit(seen[job], 0.0, NO_REASONS) for job in latest if job in seen),
    )


def jobs_as_hits(record: ShopRecord, jobs: Iterable[int]) -> tuple[Hit, ...]:
    """Return jobs as they are shown, in their order: to list what stands behind a number."""
    wanted = list(jobs)
    with record.reading() as connection:
        seen = stored.jobs_seen(connection, wanted)
    return tuple(_hit(seen[job], 0.0, NO_REASONS) for job in wanted if job in seen)


def _asked(
    question: Question, named: Named, plain: Mapping[str, str], kept: Filters, today: int
) -> Asked:
    """Return what is asked of past jobs, all but the words."""
    groups = tuple(group.id for group in question.groups)
    families = code_book().families
    related = {
        code
        for asked in question.codes
        for code in next((one.codes for one in families if asked in one.codes), ())
    }
    terms = [entry.marked(entry.CAR, word) for word in kept.vehicle_words]
    terms += [entry.marked(entry.SYSTEM, kept.system)] if kept.system else []
    return Asked(
        today=today,
        groups=groups,
        near_groups=tuple(group for group in plain if group not in groups),
        guessed=() if question.perhaps is None else (question.perhaps.id,),
        codes=question.codes,
        related=tuple(sorted(related.difference(question.codes))),
        parts=question.part_kinds,
        conditions=question.conditions,
        numbered=tuple(named.jobs),
        vehicles=tuple(named.vehicles),
        kept=Kept(
            tuple(terms),
            kept.since.toordinal() if kept.since else None,
            kept.until.toordinal() if kept.until else None,
        ),
    )


def _hits(
    finder: ReasonFinder,
    asked: Asked,
    named: Named,
    chosen: Sequence[Best],
    seen: Mapping[int, stored.JobSeen],
) -> list[tuple[Hit, bool]]:
    """Return the best jobs with the reasons for each, and whether these are weak."""
    evidence = evidence_of(chosen, asked)
    hits = []
    for one in chosen:
        if one.job in seen:
            said = named.jobs.get(one.job) or named.vehicles.get(one.vehicle, "")
            why = finder.reasons(evidence[one.job]._replace(named=said), seen[one.job].texts)
            hits.append((_hit(seen[one.job], one.points / UNIT, why), why.is_weak))
    return hits


def _fixes(
    counted: Sequence[FixCounted],
    mended: Mapping[int, tuple[list[str], str]],
    kinds: Mapping[str, Called],
) -> tuple[Fix, ...]:
    """Return what fixed the chosen jobs, the commonest first, equally common ones by name.

    The name is the one in the program's own words: the order is the same in every language.
    """
    names = {kind.id: kind.name for kind in kinds.values()}
    plain = {kind.id: kind.plain_names[0] for kind in kinds.values()}
    fixes = [name_fix(one, *mended[one.newest], names) for one in counted if one.newest in mended]
    by_name = ((-len(one.jobs), plain.get(one.fix, one.name).casefold()) for one in fixes)
    return tuple(fix for _, fix in sorted(zip(by_name, fixes, strict=True), key=itemgetter(0)))


def _plain(question: Question, vocabulary: Vocabulary) -> dict[str, str]:
    """Return the names of the symptoms read and, after them, of their neighbours."""
    plain = {group.id: group.shown for group in question.groups}
    if question.perhaps is not None:
        plain[question.perhaps.id] = question.perhaps.shown
    for group in question.groups:
        for other in vocabulary.near(group.id):
            plain.setdefault(other.id, other.shown)
    return plain


def _pieces(question: Question, named: Named) -> tuple[Piece, ...]:
    used = {word.word for word in question.words if word.place in named.places}
    rest = (one for one in question.pieces if one.kind != "word" or one.id not in used)
    return (*named.pieces, *rest)


def _hit(job: stored.JobSeen, score: float, reasons: Reasons) -> Hit:
    return Hit(
        job.id,
        job.number,
        job.day,
        job.left,
        job.vehicle,
        job.plate,
        job.texts["concern"],
        job.texts["cause"],
        job.texts["correction"],
        round(score, 3),
        reasons.why,
        reasons.marks,
    )
