"""The two places where a shop says its rules, put together from boxes of several rooms."""

from __future__ import annotations

from collections.abc import Callable, Generator, Mapping
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs.screen.people_box import PeopleBox
from desktop_app.repair_jobs.typed_entry import read_money
from desktop_app.returns_watched.screen.kind_windows_box import KindWindowsBox
from desktop_app.returns_watched.screen.shop_window_box import ShopWindowBox
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.first_rules_page import FirstRulesPage
from desktop_app.shop_window.house_rules_page import HouseRulesPage
from desktop_app.shop_window.jumped_page import JumpedPage
from desktop_app.shop_window.language_box import LanguageBox
from desktop_app.shop_window.off_where_shut import off_where_shut
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.place_names import RULES
from desktop_app.shop_window.where_box import WhereBox

if TYPE_CHECKING:
    from desktop_app.parts_compared.part_kinds.part_kind import PartKind


def rules_page(
    desk: Desk, kinds: Callable[[], Mapping[str, PartKind]], ask_which: Callable[[], object]
) -> Generator[QWidget, None, JumpedPage]:
    """Make House Rules: every rule, the promise, the people, where the shop is.

    The rules, and the first of the boxes, are handed over before the whole. `ask_which` asks
    which other shop is to be opened.
    """
    page = HouseRulesPage(desk, read_money)
    yield page
    by_kind = KindWindowsBox(desk, kinds)
    yield by_kind
    shop, around, money, backups, look = page.sections.values()
    people, windows, where = PeopleBox(desk), ShopWindowBox(desk), WhereBox(desk)
    where.other_wanted.connect(ask_which)
    for box in (people, windows, by_kind):
        page.column.insertWidget(page.column.indexOf(around), box)
    off_where_shut(desk, *page.body.findChildren(Section))
    page.column.addWidget(LanguageBox())
    page.column.addWidget(where)  # says where the shop is, also where nothing can be written
    yield page
    jumps = (
        (shop.accessibleName(), shop),
        (tr("People"), people),
        (tr("Windows"), windows),
        (money.accessibleName(), money),
        (backups.accessibleName(), backups),
        (tr("Look and language"), look),
        (tr("Where it is"), where),
    )
    jumped = JumpedPage(RULES, page, jumps)
    yield jumped
    return jumped


def first_rules_page(desk: Desk) -> FirstRulesPage:
    """Return the page on which a new shop is set up."""
    return FirstRulesPage(desk, read_money, ShopWindowBox(desk), PeopleBox(desk), LanguageBox())
