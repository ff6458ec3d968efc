"""What others wrote is shown however it falls together with our own; unsent texts are all kept."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window import others_heard
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.unsent import UNSENT, Unsent


class ToldByHand:
    """In place of whoever listens: the test says what was written, and when."""

    def __init__(
        self, _record: ShopRecord, wrote: Callable[[int], None], _there: Callable[[bool], None]
    ) -> None:
        self.wrote = wrote
        TOLD.append(self)

    def start(self) -> None:
        """Tell nothing by itself."""

    def stop(self) -> None:
        """Tell nothing by itself."""


TOLD: list[ToldByHand] = []


def test_a_deed_of_ours_right_after_anothers_does_not_hide_it(
    qtbot: QtBot, shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(others_heard, "Others", ToldByHand)
    desk = Desk(shop)
    heard = others_heard.OthersHeard(desk, dict, 0)
    shown: list[str] = []
    desk.changed.connect(lambda done: shown.append(done.words))
    actions.add_person(shop, "Ben")  # entry 1, as another desk writes it
    desk.changed.emit(actions.add_person(shop, "Tuuli"))  # entry 2 waited for it to be done
    for number in (1, 2):
        TOLD[-1].wrote(number)
    qtbot.waitUntil(lambda: others_heard.ELSEWHERE in shown)
    heard.stop()
    qtbot.waitUntil(lambda: not desk.errands.busy())


def test_what_was_not_sent_twice_over_is_kept_twice(tmp_path: Path) -> None:
    drafts = Drafts(tmp_path)
    for text in ("Carbon track in the cap.", "Burned tip."):
        drafts.keep(UNSENT, {"J-101: Cause": text})
        unsent = Unsent(drafts)  # the program is started again
    assert sorted(unsent.before().values()) == ["Burned tip.", "Carbon track in the cap."]
