"""Words of our own that a job keeps as they are written here, in whatever language they are shown.

Beside them stand words that people typed: those are shown as they are.
"""

from __future__ import annotations

from desktop_app.language import marked

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
