"""One definition of the weekly book: words, where they stand, what they mean, the source."""

from __future__ import annotations

from typing import NamedTuple

from desktop_app.language import tr

COMMON_PRACTICE = tr("common practice, no source")


class Definition(NamedTuple):
    """The headers or words that it explains, with commas between, and where they stand."""

    words: str
    on: str
    means: str
    source: str = ""
