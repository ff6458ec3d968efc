"""What is off says why, to the eye and to a screen reader."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from desktop_app.shop_window.texts import tooltip


def off_because(control: QWidget, why: str, usual: str = "") -> None:
    """Put a control off and say why over it; "" puts it on, with the words that it has usually."""
    control.setEnabled(not why)
    said = why or usual
    control.setToolTip(tooltip(said) if said else "")
    control.setAccessibleDescription(said)
