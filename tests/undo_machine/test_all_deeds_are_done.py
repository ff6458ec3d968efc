"""No deed is left out: each function that takes a record to change it is done by the machine."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from tests.undo_machine.rooms import EVERYTHING

PROGRAM = Path(__file__).resolve().parents[2] / "desktop_app"
NO_DEEDS = {
    "job_history.sealing_actions.make_sealed_copy": "writes a file outside the shop",
    "job_history.take_back_actions.undo_from_here": "the machine does it with every deed",
    "part_photos.actions.take_in": "puts a file into the shop and no row; add_photos comes after",
    "part_photos.print_actions.said_by_ruler": "works out ahead what note_ruler keeps",
    "records_exchanged.whole_actions.bring_back": "for a shop in which nothing was written yet",
    "records_exchanged.whole_actions.is_new": "only reads",
    "returns_watched.actions.who_judges": "only reads",
    "returns_watched.link_actions.change_link": "what the deeds about a return write through",
    "symptom_search.index_actions.index_is_behind": "only reads",
    "symptom_search.index_actions.renew_index": "makes the disposable index beside the record",
    "weekly_report.actions.look_at_week": "only reads",
    "weekly_report.actions.write_week": "writes a file outside the shop",
}


@cache
def deeds_written() -> frozenset[str]:
    """Every public function that takes a record and is in an actions file, or gives a Done."""
    return frozenset(
        name
        for file in PROGRAM.rglob("*.py")
        if "screen" not in file.parts
        for name in _deeds_in(file)
    )


def _deeds_in(file: Path) -> Iterator[str]:
    module = ".".join(file.relative_to(PROGRAM).with_suffix("").parts)
    for node in ast.parse(file.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
            first = node.args.args[0].annotation if node.args.args else None
            takes_record = first is not None and ast.unparse(first) == "ShopRecord"
            gives_done = node.returns is not None and ast.unparse(node.returns) == "Done"
            if takes_record and (gives_done or file.stem.endswith("actions")):
                yield f"{module}.{node.name}"


def deeds_done() -> frozenset[str]:
    """Every deed that the machine does."""
    return frozenset(
        f"{deed.__module__.removeprefix('desktop_app.')}.{deed.__name__}" for deed in EVERYTHING
    )


def test_every_deed_is_done_or_named_with_a_reason() -> None:
    left_out = deeds_written() - deeds_done() - NO_DEEDS.keys()
    assert not left_out, f"give them arguments in tests/undo_machine: {sorted(left_out)}"


def test_what_is_named_as_no_deed_is_there_and_not_done() -> None:
    assert NO_DEEDS.keys() <= deeds_written() - deeds_done()


def test_what_is_done_is_found_by_the_walk() -> None:
    assert deeds_done() <= deeds_written()
