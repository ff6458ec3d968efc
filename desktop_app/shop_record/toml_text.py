"""TOML that somebody wrote by hand or that came from outside, read without being led astray."""

from __future__ import annotations

import re
from typing import Any

from desktop_app.language import tr

MOST_LETTERS = 1_000_000
MOST_DOTS = 50  # in one key; a key of a hundred thousand parts keeps the reader busy for minutes

_QUOTED = re.compile(r"\"[^\"]*\"|'[^']*'|#.*")


def toml_values(text: str) -> dict[str, Any]:
    """Return the values of a TOML text; a ValueError or RecursionError where it can't be read."""
    if len(text) > MOST_LETTERS:
        raise ValueError(tr("it has more than {most:,} letters", most=MOST_LETTERS))
    for number, line in enumerate(text.splitlines(), 1):
        if line.count(".") > MOST_DOTS:
            key = _QUOTED.sub("", line).partition("=")[0]
            if key.count(".") > MOST_DOTS:
                raise ValueError(f"a key with too many dots (at line {number}, column 1)")
    import tomllib  # what comes with the program was read at an earlier start

    return tomllib.loads(text)
