"""What is told not to happen under a condition: "dry days nothing", "gone when it is warm".

A tick too many is seen and taken out; one that is missing nobody sees. So it is read only where a
piece of a sentence tells nothing but that and a circumstance.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache
from typing import NamedTuple

# How the car is and goes. Of what the driver does ("in gear nothing", "braking: nothing"), and of
# the morning, "nothing" may be the fault itself.
_CIRCUMSTANCES = """cold hot warming dry damp rain freezing hot-day idle steady low-speed high-speed
    smooth rough bump after-minutes"""
CIRCUMSTANCES = frozenset(_CIRCUMSTANCES.split())
# Of these too somebody tells when it happens, and then that it is gone.
STARTS = frozenset(("first-start", "first-minute", "after-standing"))


class Told(NamedTuple):
    """Whether a piece of a text tells when it happens, and whether that is all that it tells."""

    when: bool
    alone: bool


# Most texts have none of these; they are read as they are.
_PERHAPS = re.compile(
    r"\b(?:nothing|none|not|no|never|\w+n['’]?t|gone|away|disappear|vanish)", re.I
)


@lru_cache(256)  # a text is read again for each of its words while it is typed
def nothing_plain(text: str, read: Callable[[str], Told]) -> str:
    """Return the text without the pieces that tell of circumstances that nothing happens then.

    "Never does it", of which nobody speaks otherwise, becomes "fine" wherever it is told.
    """
    if not _PERHAPS.search(text):
        return text
    # What is read with is made with the first text that needs it: no start waits for it.
    from desktop_app.symptom_search.nothing_pieces import without_nothing

    return without_nothing(text, read)
