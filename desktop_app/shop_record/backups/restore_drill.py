"""The drill: once a month the newest backup is brought back on trial and looked through.

It comes into a folder inside the backups' folder that goes again. Only a backup that came back once
is known to be one.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from dataclasses import asdict, dataclass
from datetime import datetime, timedelta
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_pieces import sweep, told_of_disk
from desktop_app.shop_record.backups.backup_turn import my_turn
from desktop_app.shop_record.backups.backups_made import OWN_FOLDER, asked_of, in_their_turn, places
from desktop_app.shop_record.backups.backups_remembered import keep_in_mind, moment_in, remembered
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.backups.restore import restore_backup
from desktop_app.shop_record.checks.check import check_record
from desktop_app.shop_record.record import ShopRecord, open_shop
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

EVERY = timedelta(days=30)
_KEPT_AS = "drill"


@dataclass(frozen=True, slots=True)
class Drill:
    """When a backup was last tried and when one last came back whole; what was wrong, if it was.

    `of` names the generation that was tried.
    """

    tried_at: str = ""
    whole_at: str = ""
    wrong: str = ""
    of: str = ""

    def words(self) -> str:
        """Return what is told beside the backups."""
        if not self.whole_at:
            return tr(
                "No backup was brought back on trial yet; that is done once a month by itself."
            )
        return tr(
            "On {day} a backup was last brought back on trial: it was whole.",
            day=self.whole_at[:10],
        )

    def trouble(self) -> ShopTrouble | None:
        """Return what to say where the last trial failed."""
        if not self.wrong:
            return None
        return ShopTrouble(
            tr(
                "The newest backup was brought back on trial on {day}, and that failed: {wrong}",
                day=self.tried_at[:10],
                wrong=self.wrong,
            ),
            do=tr(
                "Use “Back up now” under Records In and Out with another disk, and “Check "
                "everything” there."
            ),
        )


def last_drill(shop: Path) -> Drill:
    """Return what a shop remembers of its last trial."""
    said = remembered(shop).get(_KEPT_AS)
    if not isinstance(said, dict):
        return Drill()
    tried, whole = str(said.get("tried_at", "")), str(said.get("whole_at", ""))
    return Drill(
        tried if moment_in(tried) else "",
        whole if moment_in(whole) else "",
        str(said.get("wrong", "")),
        str(said.get("of", "")),
    )


def monthly_drill(record: ShopRecord) -> Generator[Step, None, Drill | None]:
    """Bring the newest generation of the shop's own folder back on trial, where that is due.

    Of a shop on a server it is the second folder's where that is the one that gets them. What went
    wrong is said by what is returned; None where it was not due. Raises AnothersTurn where another
    window works in that folder.
    """
    base, now = _tried(record), record.clock()
    until_now = [
        folder for moment, folder in generations_in(base) if moment <= now.replace(tzinfo=None)
    ]
    if not until_now or not _is_due(last_drill(record.folder), now):
        return None
    with (
        told_of_disk(tr("The trial in {base}", base=base)),
        (yield from my_turn(base, waits=False)),
        _on_trial(record.folder / OWN_FOLDER) as trial,
    ):
        wrong = yield from _brought_back(record, until_now[-1], trial / "shop", now)
    said = now.isoformat(timespec="seconds")
    whole_at = last_drill(record.folder).whole_at if wrong else said
    drill = Drill(said, whole_at, wrong, until_now[-1].name)
    keep_in_mind(record.folder, _KEPT_AS, asdict(drill))
    return drill


def _tried(record: ShopRecord) -> Path:
    rules, shop, _ = asked_of(record)
    found = places(record, rules, shop)
    return found[(in_their_turn(record, found) or ["own"])[0]]


def _is_due(drill: Drill, now: datetime) -> bool:
    last = moment_in(drill.whole_at)
    ago = None if last is None else now.replace(tzinfo=None) - last
    return ago is None or not timedelta() <= ago < EVERY


def _brought_back(
    record: ShopRecord, generation: Path, folder: Path, now: datetime
) -> Generator[Step, None, str]:
    """Return what was wrong, as a sentence; nothing where all was whole."""
    try:
        yield from restore_backup(generation, folder, now)
        again = open_shop(folder, record.clock)
    except ShopTrouble as trouble:
        return trouble.what
    again.know_tables = record.know_tables
    try:
        looked = yield from check_record(again)
    finally:
        again.close()
    if not looked.problems:
        return ""
    first = looked.problems[0]
    if len(looked.problems) == 1:
        return tr("1 problem in its record, {where}: {what}", where=first.where, what=first.what)
    return tr(
        "{problems:,} problems in its record, first {where}: {what}",
        problems=len(looked.problems),
        where=first.where,
        what=first.what,
    )


@contextmanager
def _on_trial(base: Path) -> Iterator[Path]:
    """Give a folder inside the backups' folder; it goes with the block."""
    base.mkdir(exist_ok=True)
    sweep(base, ".on-trial-*")
    trial = base / f".on-trial-{os.getpid()}"
    shutil.rmtree(trial, ignore_errors=True)
    trial.mkdir()
    try:
        yield trial
    finally:
        if os.name == "nt":  # where what is write-protected can't be taken away
            for path in trial.rglob("*"):
                path.chmod(0o700)
        shutil.rmtree(trial, ignore_errors=True)
