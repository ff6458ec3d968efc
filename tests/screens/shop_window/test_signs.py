"""Every sign that the program shows is in the font that comes along."""

from __future__ import annotations

from typing import get_args

import pytest
from PySide6.QtGui import QFont, QRawFont

from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.comparison import DimensionVerdict, PairVerdict
from desktop_app.parts_compared.signs import DIMENSION_SIGNS, PAIR_SIGNS
from desktop_app.returns_watched.signs import STANDING_SIGNS
from desktop_app.returns_watched.standing import Standing
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_window.fields import ThreeWay

ALL = {
    *DIMENSION_SIGNS.values(),
    *PAIR_SIGNS.values(),
    *STANDING_SIGNS.values(),
    *SIDE_SIGNS.values(),
    *ThreeWay.SIGNS.values(),
    "⚠✓✕↶↷→…±°Ω",
}


@pytest.mark.parametrize("file", ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"])
def test_no_sign_is_an_empty_box(qapp: object, file: str) -> None:
    font = QRawFont(str(resource_path("fonts", file)), QFont().pointSizeF())
    assert font.isValid()
    missing = {char for sign in ALL for char in sign if not font.supportsCharacter(ord(char))}
    assert missing == set()


def test_signs_of_one_table_differ() -> None:
    for table in (DIMENSION_SIGNS, PAIR_SIGNS, STANDING_SIGNS):
        assert len(set(table.values())) == len(table)


def test_each_verdict_has_a_sign() -> None:
    assert set(DIMENSION_SIGNS) == set(get_args(DimensionVerdict))
    assert set(PAIR_SIGNS) == set(get_args(PairVerdict))
    assert set(STANDING_SIGNS) == set(Standing)
