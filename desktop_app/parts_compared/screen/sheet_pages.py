"""The pages of a PDF as pictures, drawn one document at a time."""

from __future__ import annotations

import threading
from collections.abc import Iterator

from PySide6.QtGui import QImage

# The drawing library must not be called from two threads at once.
_one_at_a_time = threading.Lock()


def draw_pages(pdf: bytes, dots_per_inch: float) -> Iterator[QImage]:
    """Yield each page as a picture; may be called beside the window."""
    from pypdfium2 import PdfDocument

    with _one_at_a_time:
        document = PdfDocument(pdf)
        try:
            for number in range(len(document)):
                page = document[number]
                bitmap = page.render(scale=dots_per_inch / 72, rev_byteorder=True)
                yield QImage(
                    bytes(bitmap.buffer),
                    bitmap.width,
                    bitmap.height,
                    bitmap.stride,
                    QImage.Format.Format_RGB888,
                ).copy()
                bitmap.close()
                page.close()
        finally:
            document.close()
