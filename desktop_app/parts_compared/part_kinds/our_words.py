"""What part kinds of the shop's own say in words of ours: kept as written, shown as spoken.

A shop makes a kind its own, or copies it, in one language, and may read it in another.
"""

from __future__ import annotations

from functools import cache

from desktop_app.language import code_spoken, tr
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.shop_record.own_program.resource_folder import resource_path


def ours_said(kept: str) -> str:
    """Return a text of an own kind as it is shown: in the language spoken where it is ours."""
    said = tr(kept)
    return said if said == kept or kept in _ours() else kept


def ours_kept(said: str) -> str:
    """Return a text that is shown as an own kind keeps it: as it is written where it is ours."""
    code = code_spoken()
    return _written(code).get(said, said) if code else said


@cache
def _ours() -> frozenset[str]:
    """Return every text of the kinds that come with the program, as it is written."""
    found: set[str] = set()

    def note(written: str) -> str:
        found.add(written)
        return written

    for file in resource_path("part_kinds").glob("*.toml"):
        read_kind(file.read_text("utf-8"), file.name, note)
    return frozenset(found)


@cache
def _written(_code: str) -> dict[str, str]:
    """Return those texts by what is said for them in the language spoken."""
    return {tr(text): text for text in sorted(_ours())}
