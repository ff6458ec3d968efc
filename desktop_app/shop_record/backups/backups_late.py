"""What is to be said of a shop's backups: too old, on the same disk as the shop, or not usable."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.backups_made import Place, asked_of, places, second_folder
from desktop_app.shop_record.backups.backups_remembered import moment_in, remembered
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.backups.generations_kept import days_without
from desktop_app.shop_record.backups.restore_drill import last_drill
from desktop_app.shop_record.house_rules import HouseRules
from desktop_app.shop_record.past.history import last_entry
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class _Newest:
    """The newest good backup of a place: by the clock, and the newest dated after now."""

    made: datetime | None = None
    to_come: datetime | None = None


def backup_troubles(record: ShopRecord) -> list[ShopTrouble]:
    """Return all that is to be said of a shop's backups, the worst first."""
    rules, _, _ = asked_of(record)
    said = (last_drill(record.folder).trouble(), too_long_ago(record), _same_disk(record, rules))
    return [one for one in said if one is not None]


def too_long_ago(record: ShopRecord) -> ShopTrouble | None:
    """Return what to say where the last good backup is older than the shop wants; else None."""
    rules, shop, since = asked_of(record)
    now, newest = record.clock().replace(tzinfo=None), _newest(record, rules, shop)
    asked = [("", list(newest.values()))]
    if "second" in newest:
        asked.append((rules.second_backup_folder, [newest["second"], newest["file"]]))
    for folder, found in asked:
        last = max((one.made for one in found if one.made is not None), default=None)
        days = days_without(last, since, now)
        if days >= rules.days_without_backup:
            said = [_no_backup(folder) if last is None else _old_backup(folder, days)]
            do = [tr("Plug the second disk in, or use “Back up now” under Records In and Out.")]
            if ahead := max((one.to_come for one in found if one.to_come), default=None):
                said.append(
                    tr(
                        "One is dated {ahead:%Y-%m-%d %H:%M}, which is still to come, and "
                        "lacks what was done since.",
                        ahead=ahead,
                    )
                )
                do.append(tr("Is this computer's clock right?"))
            return ShopTrouble(" ".join(said), do=" ".join(do))
    return None


def _no_backup(folder: str) -> str:
    if not folder:
        return tr("There is no backup of this shop.")
    return tr("There is no backup in {folder}.", folder=folder)


def _old_backup(folder: str, days: int) -> str:
    if not folder:
        return tr("The last good backup of this shop is {days} days old.", days=days)
    return tr("The last good backup in {folder} is {days} days old.", folder=folder, days=days)


def _newest(record: ShopRecord, rules: HouseRules, shop: str) -> dict[Place, _Newest]:
    """Return the newest good backup of each place: by what lies there, else by what is known."""
    known, now = remembered(record.folder), record.clock().replace(tzinfo=None)
    with record.reading() as connection:
        _, head = last_entry(connection)
    newest: dict[Place, _Newest] = {"file": _known(known.get("file"), now)}
    for place, base in places(record, rules, shop).items():
        there = base.parent.is_dir()
        newest[place] = _lying_in(base, head, now) if there else _known(known.get(place), now)
    return newest


def _known(said: object, now: datetime) -> _Newest:
    moment = moment_in(said)
    return _Newest(to_come=moment) if moment is not None and moment > now else _Newest(moment)


def _lying_in(base: Path, head: str, now: datetime) -> _Newest:
    """Look at a folder of generations; one dated after now is good while it holds everything.

    A clock that ran ahead for a day must not make backups look young for ever.
    """
    to_come = None
    for moment, folder in reversed(generations_in(base)):
        if moment <= now:
            return _Newest(moment, to_come)
        if _head_of(folder) == head:
            return _Newest(now)
        to_come = to_come or moment
    return _Newest(to_come=to_come)


def _head_of(folder: Path) -> str:
    try:
        return open_backup(folder).manifest.head
    except ShopTrouble:
        return ""


def _same_disk(record: ShopRecord, rules: HouseRules) -> ShopTrouble | None:
    second = second_folder(rules)
    if record.on_server and not read_place(record.folder).address.is_here():
        return None  # the shop lies on another computer
    try:
        if second is None or second.stat().st_dev != record.folder.stat().st_dev:
            return None
    except OSError:
        return None  # not plugged in
    return ShopTrouble(
        tr(
            "The second backup folder {second} lies on the same disk as the shop: one "
            "broken disk takes both.",
            second=second,
        ),
        do=tr("Name a folder on another disk under House Rules, or plug that disk in."),
    )
