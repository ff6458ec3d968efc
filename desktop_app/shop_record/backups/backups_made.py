"""Where a shop's backups lie, and how each place gets its own, once a day and before large changes.

What each place got is also remembered in the shop's folder: a stick may not be plugged in.
"""

from __future__ import annotations

import os
from collections.abc import Generator, Mapping
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from typing import Literal

from sqlalchemy import select

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import Manifest
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.backup_pieces import told_of_disk
from desktop_app.shop_record.backups.backup_turn import AnothersTurn, my_turn
from desktop_app.shop_record.backups.backups_remembered import keep_in_mind
from desktop_app.shop_record.backups.generations import (
    GenerationMade,
    generation_in_turn,
    generations_in,
    make_generation,
)
from desktop_app.shop_record.backups.generations_kept import is_due
from desktop_app.shop_record.house_rules import NO_FOLDER, HouseRules, read_rules
from desktop_app.shop_record.kept_value import kept_moment
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.tables import HistoryEntry
from desktop_app.shop_record.trouble import ShopTrouble

OWN_FOLDER = "backups"
Place = Literal["own", "second", "file"]


def places(record: ShopRecord, rules: HouseRules, shop: str) -> dict[Place, Path]:
    """Return the folders of generations; on the second disk each shop has one of its own."""
    found: dict[Place, Path] = {"own": record.folder / OWN_FOLDER}
    if (second := second_folder(rules)) is not None:
        found["second"] = second / f"benchwitness-{shop[:12] or 'new'}"
    return found


def second_folder(rules: HouseRules) -> Path | None:
    """Return the folder on another disk that the house rules name; None where they name none."""
    if rules.second_backup_folder == NO_FOLDER:
        return None
    return Path(os.path.expanduser(rules.second_backup_folder))  # an unknown ~name stays


def daily_backup(record: ShopRecord) -> Generator[Step, None, list[GenerationMade]]:
    """Make today's generation in each place that lacks it; a disk that is not there is left out.

    A shop in which nothing is written yet has no need of one. Of a shop on a server one generation
    a day is enough for all computers that reach the second folder: where that one is there, none is
    made in the own folder. Raises AnothersTurn where another window makes one just now: look again
    later.
    """
    rules, shop, _ = asked_of(record)
    found = places(record, rules, shop) if shop else {}
    made: list[GenerationMade] = []
    for place in in_their_turn(record, found):
        try:
            made += yield from _todays(record, place, found[place])
        except AnothersTurn:
            raise
        except ShopTrouble:
            if record.on_server and place == "second":  # then at least here
                yield from _todays(record, "own", found["own"])
            raise
    return made


def in_their_turn(record: ShopRecord, found: Mapping[Place, Path]) -> list[Place]:
    """Return those places, of all that a shop has, that are to get a generation each day."""
    there: list[Place] = [place for place, base in found.items() if base.parent.is_dir()]
    return ["second"] if record.on_server and "second" in there else there


def _todays(
    record: ShopRecord, place: Place, base: Path
) -> Generator[Step, None, list[GenerationMade]]:
    if _is_due(base, record.clock()):
        with told_of_disk(tr("The backup in {base}", base=base)):
            base.mkdir(exist_ok=True)
            with (yield from my_turn(base, waits=False)):
                if _is_due(base, record.clock()):  # nobody else was quicker
                    one = yield from generation_in_turn(record.folder, base, record.clock())
                    remember(record.folder, place, one.manifest)
                    return [one]
    elif record.on_server:  # another computer may have made it: the folder may be away tomorrow
        with suppress(ShopTrouble, IndexError):
            remember(record.folder, place, open_backup(generations_in(base)[-1][1]).manifest)
    return []


def _is_due(base: Path, now: datetime) -> bool:
    """Tell whether the day's generation is missing; one that was made for a reason is another."""
    today = [(moment, at) for moment, at in generations_in(base) if moment.date() == now.date()]
    return is_due((moment for moment, at in today if _is_the_days(at)), now.replace(tzinfo=None))


def _is_the_days(folder: Path) -> bool:
    with suppress(ShopTrouble):
        return not open_backup(folder).manifest.reason
    return False


def backup_before(record: ShopRecord, what: str) -> Generator[Step, None, Path]:
    """Back the shop up in its own folder before something that changes much: "an import".

    Quick where most photos lie in an earlier generation. Raises ShopTrouble as a backup does.
    """
    base, reason = record.folder / OWN_FOLDER, tr("before {what}", what=what)
    made = yield from make_generation(record.folder, base, record.clock(), reason)
    remember(record.folder, "own", made.manifest)
    return made.folder


def remember(shop: Path, place: Place, manifest: Manifest) -> None:
    """Remember what a place got."""
    keep_in_mind(shop, place, manifest.made_at)


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
