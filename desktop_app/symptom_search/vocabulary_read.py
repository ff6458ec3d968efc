"""What was worked out from the vocabulary's files before, kept beside them in one more file.

Taking two thousand phrases apart is a fiftieth of a start. The file names the words that it was
made from, by their hash: where these were changed it counts for nothing, and all is worked out
anew. A test holds it to them; DEVELOPERS.md, “A symptom or a phrase”, says how it is written again.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from hashlib import sha256
from pathlib import Path

from desktop_app.symptom_search.told_words import NOTHING_BEFORE, ReadBefore

FILE = "as_read.json"


def read_before(folder: Path, texts: Iterable[str]) -> ReadBefore:
    """Return what was worked out from these texts; nothing where it was from others, or is torn."""
    try:
        said = json.loads(folder.joinpath(FILE).read_text("utf-8"))
        if said["of"] != _named(texts):
            return NOTHING_BEFORE
        words = {text: tuple(compared.split()) for text, compared in said["words"].items()}
        return ReadBefore(words, frozenset(said["forms"].split()))
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return NOTHING_BEFORE


def as_kept(texts: Iterable[str], read: ReadBefore) -> str:
    """Return the content of the file."""
    words = {text: " ".join(compared) for text, compared in sorted(read.words.items())}
    said = {"of": _named(texts), "words": words, "forms": " ".join(sorted(read.forms))}
    return json.dumps(said, ensure_ascii=False, indent=0) + "\n"


def _named(texts: Iterable[str]) -> str:
    return sha256("\n".join(texts).encode("utf-8", "surrogatepass")).hexdigest()
