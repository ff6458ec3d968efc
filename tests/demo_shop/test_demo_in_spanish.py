"""What the record keeps hangs on no language: the demo told in Spanish keeps the same rows.

The words of deeds stay as they were written, and so does a bench sum as it was said then. The
bench card that lies in two of the photos is printed in Spanish, so these are other pictures.
"""

from __future__ import annotations

import json
import os
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from desktop_app.shop_record.record_name import FILE_NAME
from tests.demo_shop.built_demo import Built
from tests.spoken.spoken_files import ROOT

pytestmark = [
    pytest.mark.embedded,
    pytest.mark.skipif(
        os.environ.get("BENCHWITNESS_LONG") != "1", reason="a demo is built once more for it"
    ),
]

BUILD = """
import sys
from pathlib import Path
from desktop_app.shop_window.own_language import speak_language
speak_language("es")
from tests.demo_shop.built_demo import build_small
build_small(Path(sys.argv[1]))
"""
#: Columns that keep what was said, in the language in which it was said, or hang on those photos.
SAID = {
    "history": {"words", "hash"},
    "kept_sum": {"inputs", "sentence"},
    "photo": {"sha256", "size_bytes"},
    "photo_scale": {"fit"},
    "mark": {"value", "expanded_u", "budget"},
}


def rows(folder: Path) -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield every row of a shop with the name of its table, without what was said."""
    record = sqlite3.connect(folder / FILE_NAME)
    record.row_factory = sqlite3.Row
    named = "SELECT name FROM sqlite_master WHERE sql LIKE 'CREATE TABLE%' ORDER BY name"
    for (table,) in record.execute(named).fetchall():
        for row in record.execute(f'SELECT * FROM "{table}"'):
            said = SAID.get(table, set())
            kept = {name: value for name, value in dict(row).items() if name not in said}
            yield table, {**kept, "body": entry(kept["body"])} if table == "history" else kept
    record.close()


def entry(body: str) -> dict[str, Any]:
    """Return an entry of the history without its words, and without what its rows say."""
    told = json.loads(body)
    del told["words"]
    for change in told["changes"]:
        for side in ("before", "after"):
            for column in SAID.get(change["table"], ()):
                (change[side] or {}).pop(column, None)
    return told


def test_a_shop_that_is_told_in_another_language_keeps_the_same(
    built: Built, tmp_path: Path
) -> None:
    subprocess.run(
        (sys.executable, "-P", "-c", BUILD, tmp_path / "shop"),
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        check=True,
        timeout=600,
    )
    english, spanish = list(rows(built.record.folder)), list(rows(tmp_path / "shop"))
    tables = {table for table, _ in english}
    assert {"history", "job", "pair", "reading", "photo", "kept_sum"} <= tables
    assert [one for one, other in zip(spanish, english, strict=True) if one != other] == []
    with sqlite3.connect(tmp_path / "shop" / FILE_NAME) as record:
        words = {row[0] for row in record.execute("SELECT words FROM history")}
    assert "Cambiar la norma de la casa “nombre del taller”" in words
