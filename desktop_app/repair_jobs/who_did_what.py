"""Who did which of the four things of a job, its kind of work, and its hours of searching."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal, NamedTuple, get_args

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

Did = Literal["wrote up", "searched", "refitted", "proved"]
#: The four things of a job in the order of work, as they are kept.
DIDS: tuple[Did, ...] = get_args(Did)
#: Those that are the technician's where nobody is named; the counter may have written the job up.
TECHNICIANS: tuple[Did, ...] = ("searched", "refitted", "proved")
#: How the history says that somebody was named.
SAY_WHO: Mapping[Did, str] = {
    "wrote up": tr("Say who wrote it up"),
    "searched": tr("Say who searched"),
    "refitted": tr("Say who refitted"),
    "proved": tr("Say who proved it"),
}

Work = Literal["inspection", "maintenance"]
#: What a job is, as it is kept (None: a repair), and its words.
WORK_WORDS: Mapping[Work | None, str] = {
    None: tr("repair"),
    "inspection": tr("inspection only"),
    "maintenance": tr("maintenance"),
}
WORKS: tuple[Work, ...] = get_args(Work)


class Doer(NamedTuple):
    """A person of the shop who did a part of a job."""

    id: int
    name: str


def work_words(work: str | None) -> str:
    """Return the words for a kind of work; those that are kept where it is none of ours."""
    return next((words for kept, words in WORK_WORDS.items() if kept == work), str(work))


def check_search(search: float | None, hours: float | None) -> None:
    """Raise a ShopTrouble where more hours went into searching than into the whole job.

    Both are hours; None is not written, and then nothing is known to be wrong.
    """
    if search is not None and hours is not None and search > hours:
        raise ShopTrouble(
            tr(
                "{search:g} hours of searching are more than the {hours:g} hours of the whole job.",
                search=search,
                hours=hours,
            ),
            do=tr(
                "Searching is a part of Hours: raise Hours on Back On, or lower the search hours."
            ),
        )
