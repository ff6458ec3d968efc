"""Deeds about part kinds: one is made the shop's own, changed, copied, or given back."""

from __future__ import annotations

from collections.abc import Callable, Collection
from typing import TypeAlias

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.part_kinds.kind_trouble import KindTrouble
from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.our_words import ours_kept, ours_said
from desktop_app.parts_compared.part_kinds.own_kind import own_id
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.stored import OwnKind
from desktop_app.parts_compared.stored_kinds import own_kind_row, pairs_of_kind
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

KindChange: TypeAlias = Callable[[PartKind], PartKind]
_LONGEST = 80


def keep_own_kind(record: ShopRecord, kind: PartKind, words: str = "") -> Done:
    """Make a kind the shop's own; it takes the place of a built-in one with the same id.

    Refused where the shop has one by that id already, unless that can't be read.
    """
    body = _body(kind)

    def work(deed: Deed) -> None:
        kept = own_kind_row(deed, kind.id)
        if kept is None:
            deed.add(OwnKind, kind=kind.id, body=body)
        elif _is_read(kept[1], kind.id):
            raise ShopTrouble(
                tr("The part kind {name} was made the shop's own already.", name=kind.name),
                kept=tr("That form was kept."),
                do=tr("Look at the kind again."),
            )
        else:
            deed.change(OwnKind, kept[0], body=body)

    return record.do(words or tr("Make {name} our own", name=kind.name), work)


def change_own_kind(record: ShopRecord, kind: PartKind, change: KindChange) -> Done:
    """Change the shop's own form of a kind as it is kept now, whatever it was when shown.

    `change` gives the changed kind or raises a ShopTrouble; nothing is kept then.
    """

    def work(deed: Deed) -> None:
        kept = own_kind_row(deed, kind.id)
        if kept is None:
            raise ShopTrouble(
                tr("The part kind {name} is not the shop's own any more.", name=kind.name),
                kept=tr("Nothing was changed."),
                do=tr("Make it our own again first."),
            )
        now = read_kind(kept[1], tr("the shop's own {id}", id=kind.id), ours_said)
        deed.change(OwnKind, kept[0], body=_body(change(now)))

    return record.do(tr("Change the part kind {name}", name=kind.name), work)


def copy_kind(record: ShopRecord, kind: PartKind, name: str, taken: Collection[str]) -> Done:
    """Copy a kind under a new name; `taken` are the ids on the shelf."""
    said = name.strip()
    if len(said) > _LONGEST:
        raise ShopTrouble(tr("The name has more than {longest} letters.", longest=_LONGEST))
    copy = kind._replace(
        id=own_id(said, taken),
        name=said,
        also=(),
        written=(),
        like=kind.like or kind.id,
    )
    return keep_own_kind(record, copy, tr("Copy {name} as {said}", name=kind.name, said=said))


def give_back(record: ShopRecord, kind: PartKind) -> Done:
    """Take the shop's own form of a kind off the shelf; a built-in one comes back in its place.

    Refused where none comes back and pairs of the kind are in the record.
    """
    folders = [resource_path("part_kinds"), record.folder / "part_kinds"]

    def work(deed: Deed) -> None:
        kept = own_kind_row(deed, kind.id)
        if kept is None:
            raise ShopTrouble(
                tr("The part kind {name} is not the shop's own.", name=kind.name),
                kept=tr("Nothing was changed."),
            )
        pairs = pairs_of_kind(deed.connection, kind.id)
        if pairs and kind.id not in load_kinds(folders).kinds:
            raise ShopTrouble(_not_judged(pairs), kept=tr("The kind stays on the shelf."))
        deed.remove(OwnKind, kept[0])

    return record.do(tr("Take our own {name} off the shelf", name=kind.name), work)


def _not_judged(pairs: int) -> str:
    if pairs == 1:
        return tr("1 pair in the record is of this kind; it would not be judged any more.")
    return tr(
        "{pairs} pairs in the record are of this kind; they would not be judged any more.",
        pairs=pairs,
    )


def _body(kind: PartKind) -> str:
    """Return the kind's text; what can't be read again is refused now."""
    body = kind_as_toml(kind, ours_kept)
    read_kind(body, kind.name)
    return body


def _is_read(body: str, kind: str) -> bool:
    """Tell whether the shelf takes the text as the kind of that id."""
    try:
        return read_kind(body, tr("the shop's own kind")).id == kind
    except KindTrouble:
        return False
