"""Choices in the rows and cards of a page while the server is away: sent, or told where they go."""

# ruff: noqa: F811 - the fixtures of a server that can be halted
from __future__ import annotations

from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QListWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import open_place
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.repair_jobs.actions import add_job
from desktop_app.returns_watched import money_owed_actions
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.unsent import UNSENT
from tests.on_a_server.test_choices_meanwhile import (  # noqa: F401
    LOGIN,
    SYSTEM,
    job_kept,
    shown,
    someone,
)
from tests.on_a_server.test_hanging import (  # noqa: F401
    AWAY,
    BACK,
    at_the_job,
    folder,
    halted,
    own_server,
)
from tests.servers import Server
from tests.shop_stories.counter import Counter
from tests.shop_stories.test_two_counters import NOW

ROTOR = "distributor rotor"
ORIGIN, MAKER = f"origin of the new part, {ROTOR}", "new, from another maker"
FATE, FITTED = f"fate of the old part, {ROTOR}", f"fitted or stopped, {ROTOR}"
FAR = "How far it is, core, distributor rotor"


def opened(folder: Path) -> closing[ShopRecord]:
    """The shop as another desk has it."""
    record = open_place(folder, lambda: NOW)
    record.know_tables()
    return closing(record)


def lay(folder: Path) -> None:
    """Lay a rotor side by side on the one job; its supplier owes a core's credit."""
    with opened(folder) as record:
        pair = actions.lay_side_by_side(record, 1, "distributor-rotor").made
        assert pair is not None
        money_owed_actions.write_owed(record, pair, "core")


def take_pair_out(record: ShopRecord, pair: int) -> None:
    """Take a pair away, and before that what is owed for it."""
    money_owed_actions.take_owed_out(record, 1)
    actions.take_pair_away(record, pair)


def pair_kept(folder: Path) -> PairView:
    """The one pair, as the record has it."""
    with opened(folder) as record, record.reading() as connection:
        found = read_pair(connection, 1)
    assert found is not None
    return found


def unsent(folder: Path) -> str:
    """What is kept on this computer, in one text."""
    return "; ".join(f"{name}: {text}" for name, text in Drafts(folder).read(UNSENT).items())


def test_what_is_chosen_of_a_pair_is_sent(qtbot: QtBot, own_server: Server, folder: Path) -> None:
    lay(folder)
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            at.choose(ORIGIN, MAKER)
            at.choose(FATE, "sent back as core")
            at.choose(FITTED, "stopped before fitting")
            at.choose(FAR, "asked for")
        at.wait_for(BACK)
        qtbot.waitUntil(lambda: unsent(folder) == "")
        assert shown(at, ORIGIN) == MAKER
    pair = pair_kept(folder)
    assert (pair.origin, pair.fate, pair.fitted) == (
        "new, other maker's",
        "sent back as core",
        False,
    )


def test_a_job_is_not_left_while_a_choice_of_it_waits(
    qtbot: QtBot, own_server: Server, folder: Path
) -> None:
    lay(folder)
    with opened(folder) as record:
        add_job(record, 1, "It smells of fuel.")
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            at.choose(ORIGIN, MAKER)
            at.press("J-102")
            at.wait_for(f"“{ORIGIN}”, “{MAKER}”, of J-101 is not sent yet; it would be lost")
            assert shown(at, ORIGIN) == MAKER
        qtbot.waitUntil(lambda: unsent(folder) == "")
        at.press("J-102")
        at.wait_for("J-102   ")
        assert not at.reads("is not sent yet")
    assert pair_kept(folder).origin == "new, other maker's"


def test_a_page_that_is_not_shown_keeps_what_was_chosen_on_it(
    qtbot: QtBot, own_server: Server, folder: Path
) -> None:
    with at_the_job(qtbot, folder) as at:
        with halted(own_server):
            at.wait_for(AWAY)
            at.choose(SYSTEM, "Ignition")
            at.press("House Rules")
        at.wait_for(BACK)
        at.quiet()
        assert "Ignition" in unsent(folder)
        at.press("J-101")
        qtbot.waitUntil(lambda: unsent(folder) == "")
        assert shown(at, SYSTEM) == "Ignition"
    assert job_kept(folder).system == "ignition"


@pytest.mark.parametrize(
    ("name", "words", "take_out", "said"),
    [
        (FAR, "asked for", money_owed_actions.take_owed_out, "What is owed on J-101"),
        (ORIGIN, MAKER, take_pair_out, f"“pair: {ROTOR}” of J-101"),
    ],
    ids=["a sum", "a pair"],
)
def test_a_choice_in_a_row_that_another_desk_takes_out_is_told_and_kept(
    qtbot: QtBot,
    server: Server,
    someone: Callable[[int], Path],
    tmp_path: Path,
    name: str,
    words: str,
    take_out: Callable[[ShopRecord, int], object],
    said: str,
) -> None:
    lay(tmp_path / "owner")
    with at_the_job(qtbot, someone(1)) as at:
        shop = tmp_path / "shop"
        server.sql(f"ALTER ROLE {LOGIN} NOLOGIN")
        server.sql(
            f"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = '{LOGIN}'"
        )
        at.wait_for("lets nobody in from here")
        at.choose(name, words)
        with opened(tmp_path / "owner") as record:
            take_out(record, 1)
        server.sql(f"ALTER ROLE {LOGIN} LOGIN")
        at.wait_for("Entered there and not kept: ")
        assert at.reads(said)
        assert at.reads(f"“{words}”.")
        assert words in unsent(shop)
        at.press("Put these words away")
        assert unsent(shop) == ""


def test_a_choice_of_a_part_kind_is_told_where_another_kind_is_shown(
    qtbot: QtBot, own_server: Server, folder: Path
) -> None:
    with at_the_job(qtbot, folder) as at:
        at.go("Part Kinds")
        at.press("Change it for our shop")
        qtbot.waitUntil(lambda: at.button("Take ours off the shelf").isVisible())
        tool = instrument(at)
        before = shown(at, tool)
        with halted(own_server):
            at.wait_for(AWAY)
            choice = at.find(QComboBox, tool)
            choice.setFocus()
            qtbot.keyClick(choice, Qt.Key.Key_Down)
            after = shown(at, tool)
            assert after != before
            kinds = at.find(QListWidget, "Part kinds")
            kinds.setFocus()
            qtbot.keyClick(kinds, Qt.Key.Key_Down)
            at.wait_for("was left before all of it was sent.")
            assert at.reads(f"{tool} “{after}”")
            assert after in unsent(folder)
        at.wait_for(BACK)


def instrument(at: Counter) -> str:
    """The name of the first choice of an instrument that offers several."""
    choices = [one for one in at.page.findChildren(QComboBox) if one.count() > 1]
    return next(one.accessibleName() for one in choices if one.currentIndex() < one.count() - 1)
