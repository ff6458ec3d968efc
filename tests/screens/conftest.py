"""What tests of screens share: an application whose look is put back."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QApplication


@pytest.fixture
def app(qapp: QApplication) -> Iterator[QApplication]:
    """The application, which a test may dress otherwise."""
    before = (qapp.font(), qapp.palette(), qapp.styleSheet())
    yield qapp
    qapp.setStyleSheet(before[2])
    qapp.setFont(before[0])
    qapp.setPalette(before[1])
