"""A field, and what may stand beside it."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QWidget


def side_by_side(field: QWidget, beside: QWidget | None) -> QHBoxLayout:
    """Return a row of the field and, on two fifths of the width, what stands beside it."""
    row = QHBoxLayout()
    row.setSpacing(14)
    if beside is None:
        row.addWidget(field)
        return row
    row.addWidget(field, 3, Qt.AlignmentFlag.AlignTop)
    row.addWidget(beside, 2, Qt.AlignmentFlag.AlignTop)
    return row
