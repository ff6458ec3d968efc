"""Starting without PySide6 reading the source of every module that is imported after it.

PySide6 looks in each source for its own name, to know whether names spelt its other way
(`from __feature__ import snake_case`) may be switched on there, and Python keeps all that was read.
Nothing here spells names that way; it costs a fourth of the start and 28 MB.
"""

from __future__ import annotations

import sys


def leave_sources_unread() -> None:
    """Tell PySide6 that no module which is imported from now on spells its names another way."""
    import PySide6.QtCore  # noqa: F401  # what is told is loaded with it

    told = sys.modules.get("shibokensupport.feature")
    if hasattr(told, "_mod_uses_pyside"):  # no part of what PySide6 promises
        told._mod_uses_pyside = _never  # type: ignore[union-attr]  # noqa: SLF001


def _never(_module: object) -> bool:
    return False
