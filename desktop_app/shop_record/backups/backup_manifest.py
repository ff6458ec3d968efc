"""The manifest of a backup: what is in it, what each piece is like, where the history stood.

What a manifest may say is checked here before anything else of a backup is believed.
"""

from __future__ import annotations

import json
import re
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

MANIFEST, RECORD = "manifest.json", "shop.sqlite"
FORM = 1
MOST_MEMBERS = 1_000_000
MOST_MANIFEST = 300_000_000  # bytes; a line for each of so many members
# Bytes that a member may have at most, by how its name begins.
MOST_BYTES = {RECORD: 1 << 38, "photos/": 100_000_000, "part_kinds/": 1_000_000}

_HASH = re.compile(r"[0-9a-f]{64}")
_PHOTO = re.compile(r"photos/([0-9a-f]{2})/(\1[0-9a-f]{62})")
_KIND = re.compile(r"part_kinds/(?!(?i:con|prn|aux|nul|com\d|lpt\d)\.)[\w-][\w .-]{0,99}\.toml")
_DO = tr("Take another backup; this one was left as it is.")


@dataclass(frozen=True, slots=True)
class Member:
    """One file of a backup: its name in it, the SHA-256 of its bytes as hex, how many they are."""

    name: str
    sha256: str
    size: int


@dataclass(frozen=True, slots=True)
class Manifest:
    """What a backup says of itself.

    `shop` is the hash of the first entry of the history (empty where there is none), `entries` and
    `head` the number and the hash of its last one, `made_at` a moment with its offset,
    `record_form` the step that the record had reached. `missing_photos` are those that were gone
    or damaged already when the backup was made. What came later, older backups don't say: `reason`
    is why it was made where nobody asked for it ("before an import"), `jobs` how many it holds,
    `last_at` when its last entry was written.
    """

    shop: str
    made_at: str
    program: str
    record_form: str
    entries: int
    head: str
    members: tuple[Member, ...]
    missing_photos: tuple[str, ...] = ()
    reason: str = ""
    jobs: int | None = None
    last_at: str = ""

    def as_bytes(self) -> bytes:
        """Return the manifest as it is written down."""
        return json.dumps({"backup_form": FORM, **asdict(self)}, indent=1).encode()

    def member(self, name: str) -> Member:
        """Return one of the members by its name."""
        return next(one for one in self.members if one.name == name)

    def photos(self) -> int:
        """Return how many photos there are."""
        return sum(one.name.startswith("photos/") for one in self.members)

    def size(self) -> int:
        """Return how many bytes all members have together."""
        return sum(one.size for one in self.members)


def refused(what: str) -> ShopTrouble:
    """Return the trouble of a backup that is not as it was written."""
    return ShopTrouble(
        tr("The backup is not used: {what}.", what=what), tr("Nothing was changed."), _DO
    )


def refused_name(name: str) -> str | None:
    """Say what is wrong with the name of a member; None where a backup may hold it."""
    shown = f"“{name[:80]}”"
    if name in (MANIFEST, RECORD) or _PHOTO.fullmatch(name) or _KIND.fullmatch(name):
        return None
    parts = name.replace("\\", "/").split("/")
    if ".." in parts or not parts[0] or ":" in name or "\\" in name:
        return tr("its member {member} leads out of the shop's folder", member=shown)
    return tr("it holds {member}, which no backup has", member=shown)


def photo_name(sha256: str) -> str:
    """Return the name that a photo has in a backup, and below the shop's folder."""
    return f"photos/{sha256[:2]}/{sha256}"


def read_manifest(content: bytes) -> Manifest:
    """Read a manifest; a ShopTrouble says what in it no backup of ours would say."""
    try:
        said = json.loads(content)
    except (ValueError, RecursionError) as error:
        raise refused(tr("{manifest} can't be read", manifest=MANIFEST)) from error
    if not isinstance(said, dict):
        raise refused(tr("{manifest} can't be read", manifest=MANIFEST))
    if said.get("backup_form") != FORM:
        raise refused(
            tr(
                "it was written by a newer program, or is no backup (form {form}, this one knows "
                "{known})",
                form=str(said.get("backup_form"))[:20],
                known=FORM,
            )
        )
    entries = _number(said, "entries")
    return Manifest(
        shop=_text(said, "shop"),
        made_at=_moment(said, "made_at"),
        program=_text(said, "program"),
        record_form=_text(said, "record_form"),
        entries=entries,
        head=_text(said, "head"),
        members=_members(said.get("members")),
        missing_photos=_missing(said.get("missing_photos")),
        reason=_text(said, "reason") if "reason" in said else "",
        jobs=_number(said, "jobs") if said.get("jobs") is not None else None,
        last_at=_text(said, "last_at") if "last_at" in said else "",
    )


def _not_said(value: Any, name: str) -> ShopTrouble:
    shown = str(value)[:40]
    return refused(
        tr("{manifest} says “{value}” for {name}", manifest=MANIFEST, value=shown, name=name)
    )


def _number(said: Mapping[str, Any], name: str) -> int:
    value = said.get(name)
    if type(value) is not int or value < 0:
        raise _not_said(value, name)
    return value


def _text(said: Mapping[str, Any], name: str) -> str:
    value = said.get(name)
    if not isinstance(value, str) or len(value) > 200:
        raise _not_said(value, name)
    return value


def _moment(said: Mapping[str, Any], name: str) -> str:
    """Return a moment as it is said; one without its offset can be held against no other."""
    moment = _text(said, name)
    with suppress(ValueError):
        if datetime.fromisoformat(moment).tzinfo is not None:
            return moment
    raise _not_said(moment, name)


def _members(said: Any) -> tuple[Member, ...]:
    if not isinstance(said, list) or len(said) > MOST_MEMBERS:
        raise refused(
            tr(
                "{manifest} lists no members, or more than {most:,}",
                manifest=MANIFEST,
                most=MOST_MEMBERS,
            )
        )
    members = tuple(_member(one) for one in said)
    # Two names that differ in case alone are one file on many disks.
    names = [one.name.lower() for one in members]
    if len(set(names)) != len(names):
        raise refused(tr("{manifest} lists a member twice", manifest=MANIFEST))
    if RECORD not in names:
        raise refused(tr("{record} is not among its members", record=RECORD))
    return members


def _member(said: Any) -> Member:
    if not isinstance(said, dict) or said.keys() != {"name", "sha256", "size"}:
        raise refused(tr("{manifest} lists a member that it doesn't describe", manifest=MANIFEST))
    name, sha256, size = said["name"], said["sha256"], said["size"]
    if not isinstance(name, str) or name == MANIFEST:
        raise refused(tr("{manifest} lists “{name}”", manifest=MANIFEST, name=str(name)[:80]))
    if wrong := refused_name(name):
        raise refused(wrong)
    if not isinstance(sha256, str) or not _HASH.fullmatch(sha256):
        raise refused(tr("{manifest} says no SHA-256 for {name}", manifest=MANIFEST, name=name))
    if name.startswith("photos/") and not name.endswith(sha256):
        raise refused(
            tr(
                "{manifest} says another SHA-256 for {name} than its name",
                manifest=MANIFEST,
                name=name,
            )
        )
    most = next(most for begins, most in MOST_BYTES.items() if name.startswith(begins))
    if type(size) is not int or not 0 <= size <= most:
        raise refused(
            tr(
                "{manifest} says “{size}” for the size of {name}",
                manifest=MANIFEST,
                size=str(size)[:40],
                name=name,
            )
        )
    return Member(name, sha256, size)


def _missing(said: Any) -> tuple[str, ...]:
    if not isinstance(said, list) or len(said) > MOST_MEMBERS:
        raise refused(tr("{manifest} doesn't say which photos were missing", manifest=MANIFEST))
    if not all(isinstance(one, str) and _HASH.fullmatch(one) for one in said):
        raise refused(tr("{manifest} names a missing photo by no SHA-256", manifest=MANIFEST))
    return tuple(said)


def sorted_members(members: Sequence[Member]) -> tuple[Member, ...]:
    """Return members in the order in which they are written: the record first."""
    return tuple(sorted(members, key=lambda one: (one.name != RECORD, one.name)))
