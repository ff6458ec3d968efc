"""The shelf of part kinds: the built-in ones and the shop's own, read from their folders."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Protocol

from desktop_app.parts_compared.kind_trouble import KindTrouble
from desktop_app.parts_compared.part_kind import PartKind
from desktop_app.parts_compared.part_kind_file import read_kind


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


@dataclass(frozen=True, slots=True)
class KindShelf:
    """The kinds by id, and what was wrong with files that had to be left out."""

    kinds: dict[str, PartKind]
    troubles: tuple[KindTrouble, ...]


def load_kinds(folders: Sequence[Folder]) -> KindShelf:
    """Read every *.toml of the folders, later folders replacing kinds of the same id.

    A folder that isn't there counts as empty; a file that can't be used is left out and told of.
    """
    kinds: dict[str, PartKind] = {}
    troubles: list[KindTrouble] = []
    for folder in folders:
        if not folder.is_dir():
            continue
        files = (one for one in folder.iterdir() if one.name.endswith(".toml"))
        for file in sorted(files, key=lambda one: one.name):
            try:
                kind = read_kind(_text(file), file.name)
            except KindTrouble as trouble:
                troubles.append(trouble)
            else:
                kinds[kind.id] = kind
    return KindShelf(dict(sorted(kinds.items())), tuple(troubles))


def _text(file: Folder) -> str:
    try:
        return file.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise KindTrouble(
            file.name, None, "this isn't UTF-8 text", "Save the file again as UTF-8."
        ) from error
    except OSError as error:
        raise KindTrouble(
            file.name, None, f"the file can't be read ({error.strerror})", "Check its permissions."
        ) from error
