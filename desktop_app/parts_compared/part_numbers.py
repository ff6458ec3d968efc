"""Part numbers: the one on the box and the one on the part, and whether they agree."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.part_photos.codes.article_number import is_article_number


def numbers_differ(on_box: str, on_part: str) -> str | None:
    """Return a sentence where the box and the part in it bear different numbers, else None.

    Spaces, hyphens, dots and case don't count. An empty number was not read yet. An article number
    is the package's alone and tells nothing of the part: that is said.
    """
    box, part = _plain(on_box), _plain(on_part)
    if not box or not part or box == part:
        return None
    if is_article_number(box) and len(box) > _SHORT and not is_article_number(part):
        return tr(
            "The box says {on_box}, which looks like an article number (EAN or UPC), "
            "the part says {on_part}. Is the part's number on the box too?",
            on_box=on_box.strip(),
            on_part=on_part.strip(),
        )
    return tr(
        "The box says {on_box}, the part says {on_part}. Is the right part in the box?",
        on_box=on_box.strip(),
        on_part=on_part.strip(),
    )


def same_number(one: str, other: str) -> bool:
    """Tell whether two numbers are the same; spaces, hyphens, dots and case don't count."""
    return _plain(one) == _plain(other)


def _plain(number: str) -> str:
    return "".join(letter for letter in number.casefold() if letter.isalnum())


_SHORT = 8  # digits; a part's number has as many often enough
