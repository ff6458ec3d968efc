"""The names by which a part kind is asked for at the bench: its own, and what else it is called."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.shop_record.own_program.resource_folder import resource_path

NO_KINDS: Mapping[str, PartKind] = MappingProxyType({})


def kind_words(kind_id: str, kinds: Mapping[str, PartKind] = NO_KINDS) -> str:
    """Return the name of a kind; its id as words, where the shelf that knows it isn't at hand.

    What somebody typed or brought along for a kind stays as it is, whatever language is spoken.
    """
    if not kind_id:
        return tr("kind not said")
    known = kinds.get(kind_id)
    if known is not None:
        return known.name
    if kind_id in _ids_that_come_along():
        return tr(kind_id.replace("-", " "))
    return kind_id if " " in kind_id else kind_id.replace("-", " ")


def place_words(place: str, kind_id: str, kinds: Mapping[str, PartKind] = NO_KINDS) -> str:
    """Return the position of a part of this kind as people see it, as far as the kind is known."""
    known = kinds.get(kind_id)
    return place if known is None else known.place_said(place)


@cache
def _ids_that_come_along() -> frozenset[str]:
    """Return the ids of the kinds that come with the program: their files are called so."""
    return frozenset(file.stem for file in resource_path("part_kinds").glob("*.toml"))


def kind_names(kinds: Mapping[str, PartKind]) -> dict[str, str]:
    """Return every name to type, with the kind's id; other names say which kind they mean."""
    names = {kind.name: kind.id for kind in sorted(kinds.values(), key=lambda one: one.name)}
    for kind in kinds.values():
        for other in kind.also:
            if other not in names:
                names[f"{other} ({kind.name})"] = kind.id
    return names


def kind_called(text: str, kinds: Mapping[str, PartKind]) -> PartKind | None:
    """Return the one kind that the text names or can only mean; None where there is none."""
    wanted = " ".join(text.casefold().split())
    if not wanted:
        return None
    for kind in kinds.values():
        spoken = (kind.id, *kind.every_name, *(f"{a} ({kind.name})" for a in kind.also))
        if wanted in (one.casefold() for one in spoken):
            return kind
    meant = {i for name, i in kind_names(kinds).items() if wanted in name.casefold()}
    return kinds[meant.pop()] if len(meant) == 1 else None


def kinds_meant(text: str, kinds: Mapping[str, PartKind]) -> tuple[PartKind, ...]:
    """Return the kinds that the text may be a piece of the name of; all where it is empty.

    Those whose own name has it come before those that are only called so too; in both, a name
    that begins with it goes first, and then they stand by name.
    """
    wanted = " ".join(text.casefold().split())
    found = dict.fromkeys(i for name, i in kind_names(kinds).items() if wanted in name.casefold())

    def how_near(kind: PartKind) -> tuple[bool, bool, bool, str]:
        name = kind.name.casefold()
        called_so = any(other.casefold().startswith(wanted) for other in kind.also)
        return not name.startswith(wanted), wanted not in name, not called_so, name

    return tuple(sorted((kinds[one] for one in found), key=how_near))
