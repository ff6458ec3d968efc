"""The entries of one job's history as they are told: what each did, and how it stands now."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING, Literal

from desktop_app.job_history.change_words import change_in_words
from desktop_app.job_history.value_words import ShopSpeech, moment_in_words
from desktop_app.language import tr
from desktop_app.shop_record.past.deed_words import deed_words
from desktop_app.shop_record.past.taken_back import taken_back_among

if TYPE_CHECKING:
    from desktop_app.shop_record.deed import RowChange

State = Literal["holds", "taken back", "takes back", "brings back"]
STATE_WORDS: Mapping[State, str] = {
    "holds": tr("●  holds"),
    "taken back": tr("○  undone"),
    "takes back": tr("↶  undoes"),
    "brings back": tr("↷  does again"),
}
CAME_WITH_MANY = tr("It came with a whole table of jobs: undo that one from the undo menu.")
UNDONE_ALREADY = tr("It is undone already.")


@dataclass(frozen=True, slots=True)
class EntryRead:
    """One entry that touched a job; `place` is the computer, `at` an ISO moment by its clock.

    `changes` are those of the job's rows, `others` counts the changed rows that are not its own,
    `with_many` the rows that came or went with it in whole ranges; their values stand in it where
    it `brings_others`. `clock` says in words where a clock was set back between the entry of the
    job before this one and this one.
    """

    seq: int
    at: str
    who: str
    place: str
    words: str
    reverses: int | None
    changes: tuple[RowChange, ...]
    others: int = 0
    with_many: int = 0
    brings_others: bool = False
    clock: str = ""


@dataclass(frozen=True, slots=True)
class EntryTold:
    """One entry in words; `lines` say before and after, `stays` why it can't be undone here."""

    seq: int
    when: str
    who: str
    place: str
    words: str
    state: State
    lines: tuple[str, ...]
    stays: str = ""
    clock: str = ""

    @property
    def state_words(self) -> str:
        """How the entry stands, a sign and a word."""
        return STATE_WORDS[self.state]


def tell(newest_first: Sequence[EntryRead], speech: ShopSpeech) -> tuple[EntryTold, ...]:
    """Tell the entries of a job in the order in which they come, the newest first."""
    by_number = {entry.seq: entry for entry in newest_first}
    gone = taken_back_among([*reversed(newest_first)])
    return tuple(_tell(entry, by_number, gone, speech) for entry in newest_first)


def _tell(
    entry: EntryRead, by_number: Mapping[int, EntryRead], gone: set[int], speech: ShopSpeech
) -> EntryTold:
    state = _state(entry, by_number, gone)
    stays = CAME_WITH_MANY if entry.with_many else ""
    return EntryTold(
        entry.seq,
        _when(entry.at),
        entry.who or tr("nobody named"),
        entry.place,
        deed_words(entry.words),
        state,
        tuple(_lines(entry, speech)),
        UNDONE_ALREADY if state == "taken back" else stays,
        entry.clock,
    )


def _state(entry: EntryRead, by_number: Mapping[int, EntryRead], gone: set[int]) -> State:
    if entry.seq in gone:
        return "taken back"
    steps, one = 0, entry  # each reverses the one that was before it
    while one.reverses is not None:
        steps += 1
        if (before := by_number.get(one.reverses)) is None:
            break
        one = before
    if not steps:
        return "holds"
    return "takes back" if steps % 2 else "brings back"


def _lines(entry: EntryRead, speech: ShopSpeech) -> Iterator[str]:
    if entry.clock:
        yield entry.clock
    if entry.reverses is not None:
        yield tr("This undoes entry {number:,}.", number=entry.reverses)
    for change in entry.changes:
        yield from change_in_words(change, speech)
    if entry.with_many:
        yield tr("The job came or went with {rows:,} rows at once.", rows=entry.with_many)
    if entry.others:
        yield (
            tr("It also changed 1 row outside this job.")
            if entry.others == 1
            else tr("It also changed {rows:,} rows outside this job.", rows=entry.others)
        )


def _when(at: str) -> str:
    try:
        return moment_in_words(at)
    except ValueError:
        return at


def clock_words(seq: int, before: str, after: str) -> str:
    """Say that a clock was set back: entry `seq` is dated before the entry ahead of it; else "".

    Both are ISO moments; a minute is what the clocks of two computers may differ by.
    """
    try:
        back = datetime.fromisoformat(before) - datetime.fromisoformat(after)
    except (ValueError, TypeError):
        return ""
    if back.total_seconds() <= 60:
        return ""
    return tr(
        "A clock went back here: entry {earlier:,} says {earlier_moment}, entry {later:,} after it "
        "says {later_moment}.",
        earlier=seq - 1,
        earlier_moment=_when(before),
        later=seq,
        later_moment=_when(after),
    )
