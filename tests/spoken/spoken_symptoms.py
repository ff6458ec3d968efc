"""The names of the symptom groups that come with the program, to be gathered as well.

They stand in TOML, which Qt's tool doesn't read: they are handed to it as a file of code. What
customers say is not among them: it is matched as it is written, in whatever language is spoken.
"""

from __future__ import annotations

from desktop_app.symptom_search.vocabulary_file import shop_vocabulary


def texts() -> tuple[str, ...]:
    """Return the name of every group, as it is shown in English."""
    return tuple(group.plain for group in shop_vocabulary().groups)
