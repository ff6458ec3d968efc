"""Every kind of part is entered from the keyboard, judged, explained and printed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit

from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.parts_compared.sheet_story import words_in
from tests.screens.bench_desk import Bench, all_kinds, named, new_job

ENTER = Qt.Key.Key_Return
KINDS = all_kinds()


@pytest.fixture
def desk(shop: ShopRecord, qapp: Any) -> Iterator[Desk]:
    """A desk on a new shop."""
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


def size_of(one: Dimension) -> float:
    """Return a size that such a part may have."""
    low, high = one.typical or (None, None)
    return round((low + high) / 2, 1) if low is not None and high is not None else 40.0


def typed(one: Dimension) -> tuple[str, str]:
    """Return what somebody types for the old part and for a right new one."""
    if one.role == "word":
        word = one.choices[0] if one.choices else "plain"
        return word, word
    if one.role in ("count", "orientation"):
        return "4", "4"
    size = size_of(one)
    if one.role == "restored":
        low, high = one.allowed or (0.0, 0.0)
        change = ((low or 0.0) + (high or 0.0)) / 2
        old, new = size, size + change
        return "; ".join([f"{old:.4f}"] * 5), "; ".join([f"{new:.4f}"] * 5)
    readings = "; ".join([f"{size}"] * 5)
    return readings, readings


@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS.keys())
def test_a_pair_is_entered_judged_explained_and_printed(
    kind: PartKind, desk: Desk, qtbot: Any
) -> None:
    job = new_job(desk.record)
    bench = Bench(desk, job)
    qtbot.addWidget(bench)
    bench.resize(1100, 760)
    bench.show()
    qtbot.waitExposed(bench)
    bench.activateWindow()
    line = named(bench, QLineEdit, "Part kind")
    line.setFocus()
    qtbot.keyClicks(line, kind.name)
    qtbot.keyClick(line, ENTER)
    for one in kind.dimensions:
        if not one.essential:
            continue
        for side, text in zip(("removed", "replacement"), typed(one), strict=True):
            field = named(bench, QLineEdit, f"{one.label}, {side}")
            field.setFocus()
            qtbot.keyClicks(field, text)
            qtbot.keyClick(field, ENTER)
            QApplication.processEvents()
    judged = read_sheet(desk.record, job, KINDS).pairs[0].compared
    assert judged is not None
    assert judged.verdict != "stop and look", judged.reasons
    still_open = {one.name for one in judged.dimensions if one.essential and not one.settled_for}
    limits = {one.name for one in kind.dimensions if one.role == "limit"}
    assert still_open <= limits
    assert all(one.sentence for one in judged.dimensions)
    words = words_in(sheet_bytes(read_sheet(desk.record, job, KINDS)))
    assert kind.name.casefold() in words.casefold()
    assert judged.verdict in words
    for caution in kind.cautions:
        assert caution.split(":")[0] in words
