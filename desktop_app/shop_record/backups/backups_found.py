"""The backups within reach, each with what it holds: for whoever has to choose one."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from operator import itemgetter
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import MANIFEST, Manifest
from desktop_app.shop_record.backups.backup_opened import open_backup
from desktop_app.shop_record.backups.backups_made import OWN_FOLDER, asked_of, places
from desktop_app.shop_record.backups.generations import generations_in
from desktop_app.shop_record.backups.restore_drill import Drill
from desktop_app.shop_record.counted_words import entries_counted, jobs_counted, photos_counted
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class BackupFound:
    """A backup that can be opened: where it lies, and what it says of itself."""

    place: Path
    manifest: Manifest

    def line(self, now: datetime) -> str:
        """Return in one line when it was made and what it holds."""
        said = self.manifest
        made = datetime.fromisoformat(said.made_at)
        when = _minute(said.made_at)
        if _is_later(made, now):
            when = tr("{minute} (still to come by this computer's clock)", minute=when)
        why = f", {said.reason}" if said.reason else ""
        return f"{when}{why}: {self._holds()}"

    def lines(self, drill: Drill) -> list[str]:
        """Return what it holds, when it was found whole and where it lies."""
        said = self.manifest
        made = _minute(said.made_at)
        whole = tr("Read again and found whole when it was made, {made}.", made=made)
        if drill.of == self.place.name and drill.whole_at == drill.tried_at:
            whole = tr(
                "Read again and found whole when it was made, {made}; brought back on trial and "
                "whole on {tried}.",
                made=made,
                tried=_minute(drill.whole_at),
            )
        lines = [
            tr("Holds {holds}.", holds=self._holds()),
            whole,
            tr("It lies in {place}.", place=self.place),
        ]
        if said.missing_photos:
            lines.append(
                tr(
                    "⚠ Gone or damaged in the shop already: {photos}.",
                    photos=photos_counted(len(said.missing_photos)),
                )
            )
        return lines

    def _holds(self) -> str:
        said = self.manifest
        held = [] if said.jobs is None else [jobs_counted(said.jobs)]
        held += [photos_counted(said.photos()), entries_counted(said.entries)]
        if said.last_at:
            held.append(tr("the last of {minute}", minute=_minute(said.last_at)))
        return ", ".join(held)


def backup_folders(record: ShopRecord) -> list[Path]:
    """Return the folders in which a shop's generations lie; of a damaged one its own at least."""
    with suppress(ShopTrouble):
        rules, shop, _ = asked_of(record)
        return list(places(record, rules, shop).values())
    return [record.folder / OWN_FOLDER]


def backups_found(folders: Iterable[Path]) -> list[BackupFound]:
    """Return the generations in some folders, the newest first; what can't be opened is left out.

    May take some seconds where they hold very many photos.
    """
    found = [one for folder in folders for one in reversed(_generations(folder))]
    opened = []
    for _, place in sorted(found, key=itemgetter(0), reverse=True):
        with suppress(ShopTrouble):
            opened.append(look_at(place))
    return opened


def look_at(place: Path) -> BackupFound:
    """Open an archive, a generation or its manifest; a ShopTrouble says why it can't be used."""
    folder = place.parent if place.name == MANIFEST else place
    return BackupFound(folder, open_backup(folder).manifest)


def _generations(folder: Path) -> list[tuple[datetime, Path]]:
    try:
        return generations_in(folder)
    except OSError:
        return []


def _minute(said: str) -> str:
    """Return a moment as it is shown; as it was said where it is none."""
    with suppress(ValueError):
        return f"{datetime.fromisoformat(said):%Y-%m-%d %H:%M}"
    return said[:20]


def _is_later(moment: datetime, now: datetime) -> bool:
    return moment.replace(tzinfo=None) > now.replace(tzinfo=None)
