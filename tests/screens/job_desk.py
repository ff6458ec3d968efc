"""A desk with the page of job 1 on it; another desk writes straight into the record."""

from __future__ import annotations

from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.screen.back_on_section import BackOnSection
from desktop_app.repair_jobs.screen.found_section import FoundSection
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.screen.proof_section import ProofSection
from desktop_app.returns_watched.screen.watch_section import WatchSection
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk


class JobDesk:
    """The page of job 1 at one desk, and what the notice strip would say there."""

    def __init__(self, bot: QtBot, shop: ShopRecord) -> None:
        self.bot, self.shop, self.desk = bot, shop, Desk(shop)
        sections = (
            HeardSection(self.desk, lambda _words: (), str),
            FoundSection(self.desk),
            BackOnSection(self.desk, lambda _job: ()),
            ProofSection(self.desk),
            GoneSection(self.desk, lambda _job: ()),
            WatchSection(self.desk, {}),
        )
        named = [(str(place), section) for place, section in enumerate(sections)]
        self.page = JobPage(self.desk, named, lambda _job: "", lambda _job: ())
        bot.addWidget(self.page)
        self.page.resize(1100, 800)
        self.page.open_job(1)
        self.page.show()
        self.told: list[str] = []
        self.desk.told.connect(lambda news: self.told.append(str(news)))
