"""What a person does at the Proof of a job's page, for its tests."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TypeVar

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.screen.proof_section import ProofSection
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk

W = TypeVar("W", bound=QWidget)


@dataclass
class AtProof:
    """The page of a job with its proof, and what a person does there."""

    bot: QtBot
    shop: ShopRecord
    desk: Desk
    page: JobPage

    def find(self, sort: type[W], name: str) -> W:
        """Find what is seen under this name, or begins with it."""
        QCoreApplication.processEvents()  # rows made anew are shown
        shown = [one for one in self.page.findChildren(sort) if one.isVisible()]
        return next(one for one in shown if one.accessibleName().startswith(name))

    def press(self, name: str) -> None:
        """Click a button."""
        self.bot.mouseClick(self.find(QPushButton, name), Qt.MouseButton.LeftButton)

    def press_words(self, words: str) -> None:
        """Click a button that has its words as its name."""
        buttons = [one for one in self.page.findChildren(QPushButton) if one.isVisible()]
        button = next(one for one in buttons if one.text() == words)
        self.bot.mouseClick(button, Qt.MouseButton.LeftButton)

    def type(self, name: str, text: str) -> None:
        """Type into a field, and Enter."""
        field = self.find(QLineEdit, name)
        field.selectAll()
        self.bot.keyClicks(field, text)
        self.bot.keyClick(field, Qt.Key.Key_Return)

    def said(self) -> str:
        """Everything that can be read."""
        QCoreApplication.processEvents()
        labels = [one.text() for one in self.page.findChildren(QLabel) if one.isVisible()]
        return "\n".join(labels)

    def kept(self, job: int = 1) -> ProofKept:
        """What is in the record."""
        with self.shop.reading() as connection:
            return read_proof(connection, job)

    def words_and_distance(self) -> tuple[str, float | None]:
        """What is in the record of the drive of the first job."""
        with self.shop.reading() as connection:
            job = read_job(connection, 1)
        return job.proof_words, job.proof_distance

    def left_at(self) -> str | None:
        """When the first job was handed over."""
        with self.shop.reading() as connection:
            return read_job(connection, 1).left_at

    def level(self) -> int | None:
        """The level that is in the record."""
        with self.shop.reading() as connection:
            return read_job(connection, 1).proof_level


@contextmanager
def proof_page(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtProof]:
    """A car that misses when damp and pulling, and a second concern of the same visit."""
    said = WriteUp("misses", plate="TH 1", odometer=1000, conditions=("damp", "pulling"))
    actions.write_up(shop, said)
    actions.choose_system(shop, 1, "ignition")
    with shop.reading() as connection:
        visit = read_job(connection, 1).visit_id
    actions.add_job(shop, visit, "also squeals")
    desk = Desk(shop)
    sections: list[tuple[str, QWidget]] = [
        ("Proof", ProofSection(desk, lambda _job: ("Spray it with water at idle.",))),
        ("Gone", GoneSection(desk, lambda _job: ())),
    ]
    page = JobPage(desk, sections, lambda job: job.number, lambda _job: ())
    qtbot.addWidget(page)
    page.resize(1100, 900)
    page.show()
    page.open_job(1)
    yield AtProof(qtbot, shop, desk, page)
    desk.errands.finish()
