"""A long list is one valid JSON document, and is written while its items come."""

from __future__ import annotations

import io
import json
from collections.abc import Iterator

import pytest

from desktop_app.commands.command_line import say
from desktop_app.commands.json_pieces import json_pieces
from desktop_app.commands.outcome import Outcome


@pytest.mark.parametrize("items", [0, 1, 2, 1000, 1001, 2500])
def test_a_list_that_comes_item_by_item_is_one_document(items: int) -> None:
    expected = [{"job": f"J-{n}", "said": "é\n“x”"} for n in range(items)]
    written = "".join(json_pieces(iter(expected)))
    assert json.loads(written) == expected
    assert written.endswith("]\n")


def test_it_is_written_before_the_last_item_is_there() -> None:
    asked = []

    def items() -> Iterator[int]:
        for n in range(5000):
            asked.append(n)
            yield n

    next(json_pieces(items()))
    assert len(asked) == 1000


def test_a_document_that_is_no_list_of_items_is_as_it_was() -> None:
    assert "".join(json_pieces({"a": [1]})) == '{\n "a": [\n  1\n ]\n}\n'


def test_letters_that_the_output_lacks_are_escaped_in_long_lists(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    out = io.TextIOWrapper(io.BytesIO(), encoding="ascii", newline="")
    monkeypatch.setattr("sys.stdout", out)
    say(Outcome(iter(["é"]), ()), as_json=True)
    out.seek(0)
    assert out.read() == '[\n"\\u00e9"\n]\n'
