"""What tests of screens share: a look that is put back, a desk, and the bench of a job."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtWidgets import QApplication

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.screens.bench_desk import Bench, new_job


@pytest.fixture
def app(qapp: QApplication) -> Iterator[QApplication]:
    """The application, which a test may dress otherwise."""
    before = (qapp.font(), qapp.palette(), qapp.styleSheet())
    yield qapp
    qapp.setStyleSheet(before[2])
    qapp.setFont(before[0])
    qapp.setPalette(before[1])


@pytest.fixture(autouse=True)
def unhurried(qapp: QApplication) -> Iterator[None]:
    """Each press is meant: a page takes none for a second one of the press before.

    Which of the two it is hangs on what a page looks like, and that on the tests before this one.
    """
    before = qapp.doubleClickInterval()
    qapp.setDoubleClickInterval(1)
    yield
    qapp.setDoubleClickInterval(before)


@pytest.fixture
def desk(shop: ShopRecord, qapp: Any) -> Iterator[Desk]:
    """A desk on a new shop; its errands have ended when the test ends."""
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


@pytest.fixture
def bench(desk: Desk, qtbot: Any) -> Bench:
    """The bench of a new job, shown."""
    page = Bench(desk, new_job(desk.record))
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    qtbot.waitExposed(page)
    page.activateWindow()
    return page
