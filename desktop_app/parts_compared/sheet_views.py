"""Which views of a pair are printed: those that show both parts come first, two at most."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.parts_compared.pair_view import PairView, PhotoShown
from desktop_app.parts_compared.part_kinds.part_kind import PartKind

MOST_VIEWS = 2


@dataclass(frozen=True, slots=True)
class ViewChosen:
    """A view with the newest photo of each side, as far as there is one."""

    view: str
    removed: PhotoShown | None
    replacement: PhotoShown | None

    @property
    def shows_both(self) -> bool:
        """Whether old and new stand side by side in this view."""
        return self.removed is not None and self.replacement is not None


def views_to_print(
    pair: PairView, kind: PartKind | None, most: int = MOST_VIEWS
) -> tuple[ViewChosen, ...]:
    """Return the views to print, in the order of the part kind; one-sided ones only for want."""
    listed = kind.views if kind is not None else ()
    names = [view for view in listed if any(photo.view == view for photo in pair.photos)]
    names += list(dict.fromkeys(p.view for p in pair.photos if p.view not in names))
    found = [
        ViewChosen(name, pair.photo("removed", name), pair.photo("replacement", name))
        for name in names
    ]
    both = [view for view in found if view.shows_both]
    return tuple((both or found)[:most])
