"""What the fitted parts of a job say was done."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.replaced_words import replaced_words

CAP, ROTOR = ("distributor cap", ""), ("distributor rotor", "")
PLUGS = (("spark plug", "cylinder 1"), ("spark plug", "cylinder 3"))


@pytest.mark.parametrize(
    ("parts", "words"),
    [
        ((), ""),
        ((CAP,), "Distributor cap replaced"),
        ((CAP, ROTOR, CAP), "Distributor cap and distributor rotor replaced"),
        (
            (CAP, *PLUGS),
            "Distributor cap, spark plug (cylinder 1) and spark plug (cylinder 3) replaced",
        ),
    ],
)
def test_parts_are_named_once_each_with_its_position(
    parts: tuple[tuple[str, str], ...], words: str
) -> None:
    assert replaced_words(parts) == words
