"""The check of a whole shop, step by step: record, photos, what is derived, backups."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable, Iterator
from contextlib import suppress
from typing import TYPE_CHECKING, Any

from desktop_app.language import tr
from desktop_app.shop_record.checks.problem import GO_BACK, Checked, Problem
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord

# What reading a damaged row may end in: a value of a kind that no deed writes there.
_ODD_VALUES = (UnicodeDecodeError, AttributeError, TypeError, ValueError)


def whole_check(record: ShopRecord) -> Generator[Step, None, Checked]:
    """Check everything of a shop; nothing is written, and nobody who works in it waits."""
    from desktop_app.shop_record.checks.check import check_record, cut_short
    from desktop_app.shop_record.checks.leftovers import copy_problems, leftover_problems
    from desktop_app.shop_record.checks.looked_over import looked_over
    from desktop_app.shop_record.checks.photos_held import PhotosHeld
    from desktop_app.shop_record.checks.server_check import server_problems

    yield Step(0, 1, tr("Copying the record, to look at it in peace"))
    problems = list[Problem]()
    _read(problems, record, lambda c: problems.extend(cut_short(record, c)))
    if record.on_server:
        _read(problems, record, lambda c: problems.extend(server_problems(c)))
    with looked_over(record) as take, PhotosHeld(record.photos) as held:
        copy = yield from take()
        named = _named_early(copy)
        held.begin(sha256 for sha256, _ in named)
        looked = yield from check_record(copy)
        problems += looked.problems
        if not named:
            _read(problems, copy, lambda c: named.extend(_photos_named(c)))
        yield Step(0, 1, tr("Looking at jobs, returns and the search"))
        _read(problems, copy, lambda c: problems.extend(_in_rows(copy, c)))
        wrong, photos = yield from held.problems(named)
        problems += wrong
        if looked.readable:  # else nobody knows which photos are named
            known = looked.photos.union(sha256 for sha256, _ in named)
            problems += leftover_problems(record.photos, known, record.clock())
        problems += copy_problems(record.folder)
        problems += _derived(record)
        yield Step(0, 1, tr("Looking at the backups"))
        _guarded(problems, lambda: problems.extend(_backups(record)))
    return Checked(tuple(_each_once(problems)), photos, looked.entries, tuple(_notes(record)))


def _named_early(copy: ShopRecord) -> list[tuple[str, str]]:
    """Give the photos that are named; none where that can't be read before the damage is known."""
    with suppress(ShopTrouble, *_ODD_VALUES), copy.reading() as connection:
        return list(_photos_named(connection))
    return []


def _photos_named(connection: Any) -> Iterable[tuple[str, str]]:
    from desktop_app.part_photos.stored_names import photos_named

    return photos_named(connection)


def _in_rows(record: ShopRecord, connection: Any) -> Iterator[Problem]:
    """Give values that no deed writes, what can't be, and words that the search has otherwise."""
    from desktop_app.commands.shop_place import kinds_of
    from desktop_app.parts_compared.stored_check import bench_problems
    from desktop_app.returns_watched.stored_check import record_problems
    from desktop_app.returns_watched.stored_doubts import record_doubts
    from desktop_app.symptom_search.stored_index import JobIndex
    from desktop_app.symptom_search.stored_index_check import index_problems

    for words in bench_problems(connection):
        yield Problem(tr("the bench"), words, True, GO_BACK)
    for where, words in record_problems(connection):
        yield Problem(where, words, True, GO_BACK)
    for doubt in record_doubts(connection, record.clock().date()):
        yield Problem(doubt.where, doubt.what, False, doubt.do)
    yield from index_problems(connection, JobIndex(kinds_of(record, connection)))


def _derived(record: ShopRecord) -> Iterator[Problem]:
    from desktop_app.part_photos.stored_thumbnail_check import thumbnail_problems
    from desktop_app.symptom_search.stored_index_check import arrays_problems

    yield from thumbnail_problems(record)
    yield from arrays_problems(record.folder)


def _backups(record: ShopRecord) -> Iterator[Problem]:
    from desktop_app.commands.shop_place import shelf_of
    from desktop_app.shop_record.backups.backup_check import backup_problems

    for trouble in shelf_of(record).troubles:
        yield Problem(tr("the shop's own part kinds"), trouble.what, False, trouble.do)
    yield from backup_problems(record)


def _notes(record: ShopRecord) -> Iterator[str]:
    from desktop_app.shop_record.backups.backups_late import backup_troubles
    from desktop_app.shop_record.shared_disk import on_shared_disk

    try:
        said = backup_troubles(record)
    except ShopTrouble:
        said = []  # so damaged that it is said already
    shared = None if record.on_server else on_shared_disk(record.folder)
    for note in (*said, shared):
        if note is not None:
            yield note.what


def _read(problems: list[Problem], record: ShopRecord, read: Callable[[Any], None]) -> None:
    def work() -> None:
        with record.reading() as connection:
            read(connection)

    _guarded(problems, work)


def _guarded(problems: list[Problem], work: Callable[[], None]) -> None:
    """Look at what may be damaged; what can't be read is a problem like others."""
    try:
        work()
    except ServerLost:
        raise  # nothing is damaged: it is not there
    except ShopTrouble as trouble:
        problems.append(Problem(tr("the database"), trouble.what, True, trouble.do))
    except _ODD_VALUES:
        if not problems:
            raise  # nothing is damaged: that is a mistake of the program
        what = tr("So much is damaged that not all of it could be looked at.")
        problems.append(Problem(tr("the database"), what, True, GO_BACK))


def _each_once(problems: Iterable[Problem]) -> Iterator[Problem]:
    """Give each problem once; several looks may meet the same damage."""
    return iter(dict.fromkeys(problems))
