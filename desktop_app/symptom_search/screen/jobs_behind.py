"""What stands behind a number: its words and its jobs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from desktop_app.language import tr

MOST_SHOWN = 200  # of the jobs behind a number, the newest


class Behind(NamedTuple):
    """The jobs behind a number, the newest first; `words` name it ("Coil: 3 came back")."""

    words: str
    jobs: Sequence[int]

    def shown(self) -> tuple[int, ...]:
        """Return the jobs that are listed."""
        return tuple(self.jobs[:MOST_SHOWN])

    def heading(self) -> str:
        """Return what stands over the list; a list that is cut off says so."""
        said = f"{self.words.rstrip('.')}."
        if len(self.jobs) > MOST_SHOWN:
            return tr(
                "{said} These are the newest {shown} of {jobs:,}.",
                said=said,
                shown=MOST_SHOWN,
                jobs=len(self.jobs),
            )
        return said
