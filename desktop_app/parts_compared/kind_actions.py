"""Deeds about part kinds: one is made the shop's own, changed, copied, or given back."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.own_kind import own_id
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.stored import OwnKind
from desktop_app.parts_compared.stored_kinds import own_kind_row
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

_LONGEST = 80


def keep_own_kind(record: ShopRecord, kind: PartKind, words: str = "") -> Done:
    """Keep a kind as the shop's own; it takes the place of a built-in one with the same id."""
    body = kind_as_toml(kind)
    read_kind(body, kind.name)  # what can't be read again is refused now

    def work(deed: Deed) -> None:
        kept = own_kind_row(deed, kind.id)
        if kept is None:
            deed.add(OwnKind, kind=kind.id, body=body)
        else:
            deed.change(OwnKind, kept[0], body=body)

    return record.do(words or f"Change the part kind {kind.name}", work)


def copy_kind(record: ShopRecord, kind: PartKind, name: str, taken: Collection[str]) -> Done:
    """Copy a kind under a new name; `taken` are the ids on the shelf."""
    said = name.strip()
    if len(said) > _LONGEST:
        raise ShopTrouble(f"The name has more than {_LONGEST} letters.")
    copy = replace(kind, id=own_id(said, taken), name=said, also=())
    return keep_own_kind(record, copy, f"Copy {kind.name} as {said}")


def give_back(record: ShopRecord, kind: PartKind) -> Done:
    """Take the shop's own form of a kind off the shelf; a built-in one comes back in its place."""

    def work(deed: Deed) -> None:
        kept = own_kind_row(deed, kind.id)
        if kept is None:
            raise ShopTrouble(f"{kind.name} is not the shop's own.", kept="Nothing was changed.")
        deed.remove(OwnKind, kept[0])

    return record.do(f"Take our own {kind.name} off the shelf", work)
