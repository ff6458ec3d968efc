"""What every printed page of ours is set in, and that one page is drawn at a time.

The printing library keeps its fonts in one place for the whole program.
"""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager

from desktop_app.shop_record.own_program.resource_folder import resource_path

PLAIN, BOLD = "BenchPlain", "BenchBold"

_one_at_a_time = threading.Lock()


@contextmanager
def printing() -> Iterator[None]:
    """Have the fonts ready while a page is drawn, with nobody else drawing meanwhile."""
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont

    with _one_at_a_time:
        known = pdfmetrics.getRegisteredFontNames()
        for name, file in ((PLAIN, "DejaVuSans.ttf"), (BOLD, "DejaVuSans-Bold.ttf")):
            if name not in known:
                pdfmetrics.registerFont(TTFont(name, str(resource_path("fonts", file))))
        yield
