"""The shelf of part kinds: the built-in ones and the shop's own, read from their folders."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import NamedTuple, Protocol, TypeVar

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_table import Say, as_written
from desktop_app.parts_compared.part_kinds.kind_trouble import KindTrouble
from desktop_app.parts_compared.part_kinds.our_words import ours_said
from desktop_app.parts_compared.part_kinds.part_kind import Called, KindNames, PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind, read_names

NOTHING: Mapping[str, str] = {}
_Kind = TypeVar("_Kind", bound=Called)
_Read = Callable[[str, str, Say], _Kind]


class Folder(Protocol):
    """A folder or a file in it: a pathlib path, or a resource inside a package."""

    @property
    def name(self) -> str:
        """The last part of the path."""

    def is_dir(self) -> bool:
        """Whether this is a folder."""

    def iterdir(self) -> Iterator[Folder]:
        """What is in the folder."""

    def read_bytes(self) -> bytes:
        """What is in the file."""


class KindShelf(NamedTuple):
    """The kinds by id, what was wrong with those left out, and which are kept in the record."""

    kinds: dict[str, PartKind]
    troubles: tuple[KindTrouble, ...]
    own: frozenset[str] = frozenset()


def load_kinds(folders: Sequence[Folder], own: Mapping[str, str] = NOTHING) -> KindShelf:
    """Read every *.toml of the folders, later folders replacing kinds of the same id.

    The first folder comes with the program and speaks its language; the others are the shop's.
    `own` holds the texts that the record keeps, by id; they come last, and say what is ours in
    that language too. A folder that isn't there counts as empty; what can't be used is left out
    and told of.
    """
    kinds, troubles = _load(folders, own, read_kind, read_kind)
    return KindShelf(kinds, troubles, frozenset(own) & kinds.keys())


def load_names(folders: Sequence[Folder], own: Mapping[str, str] = NOTHING) -> dict[str, KindNames]:
    """Return what the kinds of `load_kinds` are called, in a third of the time.

    Of those that come with the program the names alone are read: tests hold the rest of them.
    """
    return _load(folders, own, read_names, lambda *kind: read_kind(*kind).names)[0]


def _load(
    folders: Sequence[Folder], own: Mapping[str, str], read_ours: _Read[_Kind], read: _Read[_Kind]
) -> tuple[dict[str, _Kind], tuple[KindTrouble, ...]]:
    kinds: dict[str, _Kind] = {}
    troubles: list[KindTrouble] = []
    for place, folder in enumerate(folders):
        if not folder.is_dir():
            continue
        files = (one for one in folder.iterdir() if one.name.endswith(".toml"))
        for file in sorted(files, key=lambda one: one.name):
            try:
                text = _text(file)
                kind = (
                    read(text, file.name, as_written) if place else read_ours(text, file.name, tr)
                )
            except KindTrouble as trouble:
                troubles.append(trouble)
            else:
                kinds[kind.id] = kind
    for name, text in own.items():
        try:
            kind = read(text, tr("the shop's own {name}", name=name), ours_said)
            if kind.id != name:
                raise KindTrouble(
                    tr("the shop's own {name}", name=name),
                    None,
                    tr("it calls itself {id}", id=kind.id),
                    tr("Take it off."),
                )
            kinds[name] = kind
        except KindTrouble as trouble:
            troubles.append(trouble)
    return dict(sorted(kinds.items())), tuple(troubles)


def _text(file: Folder) -> str:
    try:
        return file.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise KindTrouble(
            file.name, None, tr("this isn't UTF-8 text"), tr("Save the file again as UTF-8.")
        ) from error
    except OSError as error:
        raise KindTrouble(
            file.name,
            None,
            tr("the file can't be read ({strerror})", strerror=error.strerror),
            tr("Check its permissions."),
        ) from error
