"""The anchors on paper and in files name the last entry of the history, all in the same words."""

from __future__ import annotations

from sqlalchemy import select

from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs.actions import name_cause
from desktop_app.shop_record.past.anchor import anchor_now, anchor_words
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.week import read_week
from tests.parts_compared.sheet_story import a_job, kinds


def test_it_is_the_number_and_sixteen_letters_of_the_hash() -> None:
    assert anchor_words(4211, "1f2e3d4c5b6a7988" + "0" * 48) == "history 4211, 1f2e3d4c5b6a7988"
    assert anchor_words(0, "") == "history 0, empty"


def test_sheet_and_weekly_book_carry_the_anchor_of_that_moment(shop: ShopRecord) -> None:
    job = a_job(shop)
    for cause in ("Cap cracked.", "Cap tracked."):
        name_cause(shop, job, cause)
        with shop.reading() as connection:
            anchor = anchor_now(connection)
            last = connection.execute(
                select(HistoryEntry.seq, HistoryEntry.hash).order_by(HistoryEntry.seq.desc())
            ).first()
        assert last is not None
        assert anchor == anchor_words(last.seq, last.hash)
        assert read_sheet(shop, job, kinds()).anchor == anchor
        book = look_at_week(shop, read_week("2026-W47"))
        assert any(one.endswith(f"at 12:00 · {anchor}.") for one in read_first(book))
