"""Undo from here: any deed of a job gives back what was before it, or is refused in words."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import select

from desktop_app.job_history.take_back_actions import undo_from_here
from desktop_app.repair_jobs.actions import name_cause, write_correction
from desktop_app.repair_jobs.stored import Job, JobCheck, Vehicle
from desktop_app.shop_record.deed import Done, RowChange
from desktop_app.shop_record.past.history import chain_problems, done_in, stacks
from desktop_app.shop_record.record import ShopRecord, create_shop
from desktop_app.shop_record.tables import Base
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.job_history.told import history, newest
from tests.parts_compared.sheet_story import a_job, a_rotor

State = dict[tuple[str, int], dict[str, Any]]
WORDS = st.sampled_from(["", "a", "b", "c"])


def state(record: ShopRecord) -> State:
    """Every row of every table but the history's."""
    found: State = {}
    with record.reading() as connection:
        for table in Base.metadata.sorted_tables:
            if table.name != "history":
                for row in connection.execute(select(table)).mappings():
                    found[table.name, row["id"]] = dict(row)
    return found


def changes_of(record: ShopRecord, seq: int) -> list[RowChange]:
    with record.reading() as connection:
        return done_in(connection, seq)[0]


def as_before(now: State, changes: list[RowChange]) -> State:
    """The state with these changes taken back and all else as it is."""
    wanted = {row: dict(values) for row, values in now.items()}
    for change in reversed(changes):
        row = (change.table, change.row_id)
        if change.before is None:
            del wanted[row]
        elif change.after is None:
            wanted[row] = dict(change.before)
        else:
            wanted[row] |= change.before
    return wanted


@contextmanager
def a_shop() -> Iterator[tuple[ShopRecord, int]]:
    with tempfile.TemporaryDirectory() as folder:
        record = create_shop(Path(folder) / "shop", lambda: NOON)
        yield record, a_job(record)
        record.close()


Doing = Callable[[ShopRecord, int], object]


def _finding(words: str) -> Doing:
    return lambda record, job: record.do(
        "Write down a finding",
        lambda deed: deed.add(JobCheck, job_id=job, kind="inspection", words=words) and None,
    )


def _unfind(which: int) -> Doing:
    def work(record: ShopRecord, _job: int) -> None:
        with record.reading() as connection:
            rows = connection.execute(select(JobCheck.id)).scalars().all()
        if rows:
            row = rows[which % len(rows)]
            record.do("Take a finding out", lambda deed: deed.remove(JobCheck, row))

    return work


def _several(words: str) -> Doing:
    def work(record: ShopRecord, job: int) -> None:
        with record.deed("Several at once") as deed:
            deed.change(Job, job, correction=words)
            deed.change(Vehicle, 1, tag=words)
            check = deed.add(JobCheck, job_id=job, kind="inspection", words=words)
            deed.change(JobCheck, check, outcome="twice in one deed")

    return work


def _undo_if_any(record: ShopRecord, _job: int) -> None:
    if record.can_undo():
        record.undo()


def _redo_if_any(record: ShopRecord, _job: int) -> None:
    if record.can_redo():
        record.redo()


DEEDS: st.SearchStrategy[Doing] = st.one_of(
    WORDS.map(lambda words: lambda record, job: name_cause(record, job, words)),
    WORDS.map(lambda words: lambda record, job: write_correction(record, job, words)),
    WORDS.map(_finding),
    st.integers(0, 3).map(_unfind),
    WORDS.map(_several),
    st.just(_undo_if_any),
    st.just(_redo_if_any),
)


def tried(record: ShopRecord, seq: int) -> Done | ShopTrouble:
    try:
        return undo_from_here(record, seq)
    except ShopTrouble as trouble:
        return trouble


@settings(max_examples=40)
@given(st.lists(DEEDS, min_size=1, max_size=7), st.integers(0, 20), st.sampled_from(["", "Benno"]))
def test_any_deed_gives_the_state_before_or_is_refused(
    deeds: list[Doing], which: int, who: str
) -> None:
    with a_shop() as (record, job):
        for doing in deeds:
            try:
                doing(record, job)
            except ShopTrouble:
                continue  # the car's taking in could not be undone; nothing was changed
        if ("job", job) not in state(record):
            return
        entries = history(record, job).told
        seq = entries[which % len(entries)].seq
        before = state(record)
        record.who = who
        came = tried(record, seq)
        if isinstance(came, ShopTrouble):
            assert state(record) == before
            assert "can't be undone" in came.what
            assert came.kept == "Nothing was changed."
            assert came.do
        else:
            assert state(record) == as_before(before, changes_of(record, seq))
            if came.seq is not None and ("job", job) in state(record):
                assert newest(record, job).lines[0] == f"This undoes entry {seq:,}."
            if came.seq is not None:
                with record.reading() as connection:
                    undo, _redo = stacks(connection)
                taken_back_by_its_own = bool(undo) and undo[-1].seq == came.seq
                (record.undo if taken_back_by_its_own else record.redo)()
                assert state(record) == before
        with record.reading() as connection:
            assert chain_problems(connection)[1] == []


def test_what_came_later_stays(shop: ShopRecord) -> None:
    job = a_job(shop)
    deed = name_cause(shop, job, "Cap tracked.")
    write_correction(shop, job, "Cap and rotor.")
    assert deed.seq is not None
    undo_from_here(shop, deed.seq)
    row = state(shop)["job", job]
    assert (row["cause"], row["correction"]) == ("Rotor tip burned back.", "Cap and rotor.")


def test_it_is_refused_with_who_and_what_where_someone_has_changed_it_since(
    shop: ShopRecord,
) -> None:
    job = a_job(shop)
    deed = name_cause(shop, job, "Cap tracked.")
    shop.who = "Benno"
    name_cause(shop, job, "Lead cracked.")
    shop.who = "Sanne"
    write_correction(shop, job, "Leads.")  # of the same job, but not of the cause
    assert deed.seq is not None
    with pytest.raises(ShopTrouble, match=r"Benno has changed it since \(Name the cause\)"):
        undo_from_here(shop, deed.seq)


def test_it_is_refused_where_something_hangs_on_it(shop: ShopRecord) -> None:
    rotor = a_rotor(shop)
    first = history(shop, rotor.job).first
    with pytest.raises(ShopTrouble, match="something else hangs on it by now"):
        undo_from_here(shop, first)


def test_the_undo_menu_follows(shop: ShopRecord) -> None:
    """Undo takes it back first; then the deed is offered again in its own turn."""
    job = a_job(shop)
    first = name_cause(shop, job, "Cap tracked.")
    write_correction(shop, job, "Cap and rotor.")
    assert first.seq is not None
    undo_from_here(shop, first.seq)
    assert shop.undo_and_redo() == ("Name the cause", None)
    shop.undo()
    assert state(shop)["job", job]["cause"] == "Cap tracked."
    assert shop.undo_and_redo() == ("Write down the correction", "Name the cause")
    shop.undo()
    shop.undo()
    row = state(shop)["job", job]
    assert (row["cause"], row["correction"]) == ("Rotor tip burned back.", "Rotor replaced.")


def test_while_it_holds_the_deed_is_not_offered_a_second_time(shop: ShopRecord) -> None:
    job = a_job(shop)
    first = name_cause(shop, job, "Cap tracked.")
    write_correction(shop, job, "Cap and rotor.")
    assert first.seq is not None
    undo_from_here(shop, first.seq)
    write_correction(shop, job, "Leads.")
    for _ in range(3):
        shop.undo()
    assert shop.can_undo() == "Name the cause"
    row = state(shop)["job", job]
    assert (row["cause"], row["correction"]) == ("Cap tracked.", "Rotor replaced.")


def test_of_the_last_deed_it_is_undo_itself(shop: ShopRecord) -> None:
    job = a_job(shop)
    deed = name_cause(shop, job, "Cap tracked.")
    assert deed.seq is not None
    undo_from_here(shop, deed.seq)
    assert shop.can_redo() == "Name the cause"
    shop.redo()
    assert state(shop)["job", job]["cause"] == "Cap tracked."


def test_an_entry_that_is_not_there_is_refused(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="no entry 4711"):
        undo_from_here(shop, 4711)
