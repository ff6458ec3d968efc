"""Two desks wrote in one place: what was written there, what was typed here, a person chooses."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.written_meanwhile import WrittenMeanwhile

MINE, THEIRS = tr("Keep what I typed"), tr("Keep what was written")


def both(news: WrittenMeanwhile, typed: str) -> str:
    """Return what is said of the two before a person chooses."""
    return tr(
        "Written at another desk meanwhile: {stands}. Typed here, not kept: “{typed}”.",
        stands=news.stands,
        typed=typed,
    )


def hearing(
    deed: Callable[..., Done], hear: Callable[[WrittenMeanwhile], object]
) -> Callable[..., Done]:
    """Return the deed; that another desk wrote meanwhile is heard, and refuses it as before."""

    def tried(*args: Any, **more: Any) -> Done:
        try:
            return deed(*args, **more)
        except WrittenMeanwhile as news:
            hear(news)
            raise

    return tried
