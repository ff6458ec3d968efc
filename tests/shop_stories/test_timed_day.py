"""The timed day: every entry stays within its figure, in a shop that these cars know already."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from tests.part_photos.bench_pictures import encoded, noisy
from tests.shop_stories import timed_day as day
from tests.shop_stories.counted_user import CountedUser, table
from tests.shop_stories.counter import Counter, sitting


def photos(folder: Path, *names: str) -> list[Path]:
    files = []
    for seed, name in enumerate(names):
        files.append(folder / f"{name}.jpg")
        files[-1].write_bytes(encoded(noisy(400, 300, seed)))
    return files


def back_to_the_job(at: Counter) -> None:
    at.press("J-107")
    at.bot.waitUntil(lambda: at.window.here() == "Job")


def work_through(user: CountedUser, folder: Path) -> None:
    """Do the entries in the order in which the work on one car brings them."""
    day.read_the_watch(user)
    day.take_a_new_car_in(user)
    day.take_a_known_car_in(user)
    day.say_it_is_the_same_trouble(user)
    day.see_the_earlier_job_beside_it(user)
    back_to_the_job(user.at)
    day.save_the_codes(user)
    day.ask_the_old_jobs(user)
    back_to_the_job(user.at)
    day.photograph_the_cap(user, photos(folder, "leads", "old cap", "new cap"))
    day.read_the_numbers(user)
    day.document_a_pair(user, photos(folder, "old rotor", "new rotor"))
    day.show_the_customer(user)
    day.tick_the_refit_by_mouse(user)
    day.tick_the_refit(user)
    day.prove_it(user)
    day.hand_it_over(user)
    day.judge_the_return(user)
    day.write_the_week(user)


@pytest.mark.qt_log_ignore("This plugin does not support (raise|grabbing)", extend=True)
def test_every_entry_of_the_day_stays_within_its_figure(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shop, book = tmp_path / "shop", tmp_path / "week.xlsx"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(book), ""))
    day.write_history(shop)
    with sitting(qtbot, shop, day.MORNING) as at:
        user = CountedUser(at)
        work_through(user, tmp_path)
    assert book.is_file()
    sys.stdout.write(f"\n{table(user.day)}\n")
    assert [entry.row() for entry in user.day if not entry.is_met()] == []
