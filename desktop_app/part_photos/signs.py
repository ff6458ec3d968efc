"""The two sides of a pair: the signs, which read in black and white, and what each is called."""

from __future__ import annotations

from desktop_app.language import tr

SIDE_SIGNS = {"removed": "◆", "replacement": "●"}
SIDE_NAMES = {"removed": tr("removed part"), "replacement": tr("replacement")}
