"""Words of our own that a job keeps as they are written here, in whatever language they are shown.

Beside them stand words that people typed: those are shown as they are.
"""

from __future__ import annotations

from collections.abc import Collection

from desktop_app.language import marked, tr

#: Why an odometer cannot be read; a person may say it in other words.
UNREAD_REASONS = (
    marked("display dead"),
    marked("battery flat"),
    marked("key not here"),
    marked("dirty or broken glass"),
    marked("other"),
)
#: Why the odometer of a visit that came with a table of old jobs was not read.
NOT_IMPORTED = marked("not in the imported file")
#: All of these.
WHY_UNREAD = (*UNREAD_REASONS, NOT_IMPORTED)
#: That nothing was declined or left undone.
NOTHING = marked("nothing")


def as_shown(kept: str, ours: Collection[str]) -> str:
    """Return kept words as they are shown: those of our own in the language spoken."""
    return tr(kept) if kept in ours else kept


def as_kept(typed: str, ours: Collection[str]) -> str:
    """Return typed words as they are kept: those that show words of our own as these."""
    bare = typed.strip()
    return next((one for one in ours if bare and bare == tr(one)), typed)
