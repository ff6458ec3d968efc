"""What a drop or the clipboard holds, as arrivals: files, a list of paths, or a picture."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMimeData, QUrl
from PySide6.QtGui import QImage

from desktop_app.language import tr
from desktop_app.part_photos.arrival import Arrival, arrived
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.picture_kind import ACCEPTED, ENDINGS

# Qt would draw these, together with whatever files they name: they never come as a picture.
_DRAWINGS = ("image/svg", "image/pdf")


def may_hold_photos(mime: QMimeData) -> bool:
    """Tell, without looking at any file, whether a drag is worth accepting."""
    return mime.hasUrls() or mime.hasImage() or any(mime.hasFormat(kind) for kind in ENDINGS)


def arrivals_in(
    mime: QMimeData, now: datetime
) -> tuple[list[Arrival | tuple[str, QImage]], list[PhotoTrouble]]:
    """Return what came, and what can't be fetched from here (addresses of the web).

    A picture without a file is (name, image); its bytes are made beside the window.
    """
    stamp = tr("pasted {now:%Y-%m-%d %H.%M.%S}", now=now)
    urls = mime.urls() if mime.hasUrls() else _urls_of_text(mime)
    if urls:
        return _from_urls(urls)
    for kind, ending in ENDINGS.items():
        if mime.hasFormat(kind) and mime.data(kind).size() > 0:
            return [Arrival(f"{stamp}.{ending}", content=bytes(mime.data(kind).data()))], []
    if any(kind.lower().startswith(_DRAWINGS) for kind in mime.formats()):
        reason = tr("it is a drawing; photos are {accepted}.", accepted=ACCEPTED)
        return [], [PhotoTrouble(stamp, reason, tr("Save it as one of these first."))]
    image = mime.imageData() if mime.hasImage() else None
    if isinstance(image, QImage) and not image.isNull():
        return [(f"{stamp}.png", image)], []
    return [], []


def as_png(name: str, image: QImage) -> Arrival:
    """Turn a picture from the clipboard into the bytes of a PNG; call it beside the window."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")  # type: ignore[call-overload]
    return Arrival(name, content=bytes(buffer.data().data()))


def _from_urls(
    urls: list[QUrl],
) -> tuple[list[Arrival | tuple[str, QImage]], list[PhotoTrouble]]:
    files: list[Arrival | tuple[str, QImage]] = []
    elsewhere = []
    for url in urls:
        if url.isLocalFile():
            files.append(arrived(Path(url.toLocalFile())))
        else:
            reason = tr("it lies on the web, not on this computer.")
            elsewhere.append(PhotoTrouble(url.fileName(), reason, tr("Save it as a file first.")))
    return files, elsewhere


def _urls_of_text(mime: QMimeData) -> list[QUrl]:
    """Read pasted text as paths, one a line, where every line is a whole path."""
    lines = [line.strip().strip('"') for line in mime.text().splitlines() if line.strip()]
    urls = []
    for line in lines:
        if line.startswith("file:"):
            urls.append(QUrl(line))
        elif Path(line).is_absolute():
            urls.append(QUrl.fromLocalFile(line))
        else:
            return []
    return urls
