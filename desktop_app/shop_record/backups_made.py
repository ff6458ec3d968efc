"""Where a shop's backups lie, when each place got its last good one, and when that is too long ago.

What each place got is also remembered in the shop's folder: a stick may not be plugged in.
"""

from __future__ import annotations

import json
import os
from collections.abc import Generator
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from typing import Any, Literal

from sqlalchemy import select

from desktop_app.shop_record.backup_manifest import Manifest
from desktop_app.shop_record.generations import (
    GenerationMade,
    generations_in,
    make_generation,
)
from desktop_app.shop_record.generations_kept import days_without, is_due
from desktop_app.shop_record.house_rules import NO_FOLDER, HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_moment
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble

OWN_FOLDER, MEMORY = "backups", "backups-made.json"
Place = Literal["own", "second", "file"]


def places(record: ShopRecord, rules: HouseRules, shop: str) -> dict[Place, Path]:
    """Return the folders of generations; on the second disk each shop has one of its own."""
    found: dict[Place, Path] = {"own": record.folder / OWN_FOLDER}
    if rules.second_backup_folder != NO_FOLDER:
        second = Path(os.path.expanduser(rules.second_backup_folder))  # an unknown ~name stays
        found["second"] = second / f"benchwitness-{shop[:12] or 'new'}"
    return found


def daily_backup(record: ShopRecord) -> Generator[Step, None, list[GenerationMade]]:
    """Make today's generation in each place that lacks it; a disk that is not there is left out.

    A shop in which nothing is written yet has no need of one.
    """
    rules, shop, _ = asked_of(record)
    made: list[GenerationMade] = []
    for place, base in places(record, rules, shop).items() if shop else ():
        now = record.clock()
        if not base.parent.is_dir() or not is_due(moments_in(base), now.replace(tzinfo=None)):
            continue
        generation = yield from make_generation(record.folder, base, now)
        remember(record.folder, place, generation.manifest)
        made.append(generation)
    return made


def moments_in(base: Path) -> list[datetime]:
    """Return when the generations of a folder were made, without an offset."""
    return [moment for moment, _ in generations_in(base)]


def remember(shop: Path, place: Place, manifest: Manifest) -> None:
    """Remember what a place got; a memory that can't be written is no trouble."""
    said = _remembered(shop) | {place: manifest.made_at}
    part = shop / f"{MEMORY}.part"
    with suppress(OSError):
        part.write_text(json.dumps(said, indent=1), encoding="utf-8")
        part.replace(shop / MEMORY)


def too_long_ago(record: ShopRecord) -> ShopTrouble | None:
    """Return what to say where the last good backup is older than the shop wants; else None."""
    rules, shop, since = asked_of(record)
    now, newest = record.clock().replace(tzinfo=None), _newest(record, rules, shop)
    asked = [("of this shop", list(newest.values()))]
    if "second" in newest:
        asked.append((f"in {rules.second_backup_folder}", [newest["second"], newest["file"]]))
    for what, moments in asked:
        last = max((moment for moment in moments if moment is not None), default=None)
        days = days_without(last, since, now)
        if days >= rules.days_without_backup:
            old = f"The last good backup {what} is {days} days old."
            return ShopTrouble(
                f"There is no backup {what}." if last is None else old,
                do="Plug the second disk in, or use “Back up now” under Records In and Out.",
            )
    return None


def _newest(record: ShopRecord, rules: HouseRules, shop: str) -> dict[Place, datetime | None]:
    """Return the newest good backup of each place: by what lies there, else by what is known."""
    known = _remembered(record.folder)
    newest: dict[Place, datetime | None] = {"file": _moment(known.get("file"))}
    for place, base in places(record, rules, shop).items():
        there = base.parent.is_dir()
        newest[place] = max(moments_in(base), default=None) if there else _moment(known.get(place))
    return newest


def asked_of(record: ShopRecord) -> tuple[HouseRules, str, datetime | None]:
    """Return the rules, what names the shop, and when its first entry was written."""
    with record.reading() as connection:
        first = connection.execute(
            select(HistoryEntry.hash, HistoryEntry.at).order_by(HistoryEntry.seq).limit(1)
        ).first()
        rules = read_rules(connection)
    if first is None:
        return rules, "", None
    return rules, first.hash, kept_moment(first.at).replace(tzinfo=None)


def _remembered(shop: Path) -> dict[str, Any]:
    try:
        said = json.loads((shop / MEMORY).read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return said if isinstance(said, dict) else {}


def _moment(said: object) -> datetime | None:
    try:
        return datetime.fromisoformat(str(said)).replace(tzinfo=None)
    except ValueError:
        return None
