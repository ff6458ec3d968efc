"""A file on the clipboard: pasted into a folder or a letter it is the file, elsewhere a picture."""

from __future__ import annotations

import atexit
from pathlib import Path
from shutil import rmtree
from tempfile import mkdtemp

from PySide6.QtCore import QMimeData, QUrl
from PySide6.QtGui import QGuiApplication, QImage

_OURS: list[Path] = []  # the folder of what was copied last; it goes with the program


def copy_file(content: bytes, name: str, media_type: str, picture: QImage | None = None) -> None:
    """Put a file on the clipboard by its bytes and by its place, and a picture of it.

    Who pastes it needs a place to take it from, so it lies in a folder of this user alone until
    something else is copied or the program ends. Raises OSError where there is no room for it.
    """
    folder = Path(mkdtemp(prefix="benchwitness-copied-"))
    _let_go()
    _OURS.append(folder)
    file = folder / name
    file.write_bytes(content)
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(file))])
    mime.setData(media_type, content)
    if picture is not None:
        mime.setImageData(picture)
    QGuiApplication.clipboard().setMimeData(mime)


@atexit.register
def _let_go() -> None:
    for folder in _OURS:
        rmtree(folder, ignore_errors=True)
    _OURS.clear()
