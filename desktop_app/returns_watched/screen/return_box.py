"""One boxed part of the page on which a return is judged; each field is a deed of its own."""

from __future__ import annotations

from collections.abc import Callable

from desktop_app.returns_watched.judging import Judging
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section


class ReturnBox(Section):
    """A section about one return, for as long as that return is on the page."""

    def __init__(self, heading: str, desk: Desk, judging: Judging) -> None:
        super().__init__(heading)
        self.desk = desk
        self.judging = judging

    def do(self, deed: Callable[..., Done], *args: object) -> Done | None:
        """Do a deed on this return; None where it was refused."""
        return self.desk.do(deed, self.judging.earlier_id, self.judging.later_id, *args)
