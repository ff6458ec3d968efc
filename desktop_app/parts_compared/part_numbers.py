"""Part numbers: the one on the box and the one on the part, and whether they agree."""

from __future__ import annotations


def numbers_differ(on_box: str, on_part: str) -> str | None:
    """Return a sentence where the box and the part in it bear different numbers, else None.

    Spaces, hyphens, dots and case don't count. An empty number was not read yet.
    """
    box, part = _plain(on_box), _plain(on_part)
    if not box or not part or box == part:
        return None
    return (
        f"The box says {on_box.strip()}, the part says {on_part.strip()}. "
        "Is the right part in the box?"
    )


def _plain(number: str) -> str:
    return "".join(letter for letter in number.casefold() if letter.isalnum())
