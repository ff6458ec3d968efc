"""What the window remembers of itself between two starts; nothing of the shop stands there."""

from __future__ import annotations

from platformdirs import user_config_path
from PySide6.QtCore import QSettings


def window_memory() -> QSettings:
    """Return the memory of this user's windows."""
    file = user_config_path("benchwitness", appauthor=False) / "window.ini"
    return QSettings(str(file), QSettings.Format.IniFormat)
