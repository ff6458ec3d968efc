"""What a command has to say: one JSON document, or the same facts as lines for a person."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any, Protocol


@dataclass(frozen=True, slots=True)
class Outcome:
    """The facts of one command; `status` is its exit status.

    Where `json` is an iterator it is printed as one list, item by item, and `lines` line by line:
    what they are made of must have been read already, so that nothing is refused half-way.
    """

    json: Any
    lines: Iterable[str]
    status: int = 0


class Asked(Protocol):
    """The words of the command line, read by argparse."""

    def __getattr__(self, name: str) -> Any: ...


Command = Callable[[Asked], Outcome]


def one_or_list(found: list[Any]) -> Any:
    """Return a single document for one input, and the list in order for several."""
    return found[0] if len(found) == 1 else found
