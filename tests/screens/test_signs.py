"""Every sign that the program shows is in the font that comes along."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QFont, QRawFont

from desktop_app.shop_record.resource_folder import resource_path
from desktop_app.shop_window import signs
from desktop_app.shop_window.fields import ThreeWay

ALL = {
    *signs.DIMENSION_SIGNS.values(),
    *signs.PAIR_SIGNS.values(),
    *signs.STANDING_SIGNS.values(),
    *signs.SIDE_SIGNS.values(),
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
    for table in (signs.DIMENSION_SIGNS, signs.PAIR_SIGNS, signs.STANDING_SIGNS):
        assert len(set(table.values())) == len(table)
