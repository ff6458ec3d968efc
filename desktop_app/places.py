"""The places of the window: each page is made here, with what it needs handed in."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Slot
from PySide6.QtWidgets import QWidget

from desktop_app import places_ahead
from desktop_app.above_the_places import stand_above
from desktop_app.commands.shop_place import kind_names, kinds_of, shelf_of
from desktop_app.language import tr
from desktop_app.left_again import LeftAgain
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.own_program.tables_read import tables_read
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window import place_names as place
from desktop_app.shop_window.classes_made import make_classes
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.notice import Notice, not_accepted, not_sent
from desktop_app.symptom_search.stored_shop_words import ShopWords
from desktop_app.symptom_search.vocabulary import Vocabulary

if TYPE_CHECKING:
    from desktop_app.parts_compared.part_kinds.kind_shelf import KindShelf
    from desktop_app.parts_compared.part_kinds.kind_trouble import KindTrouble
    from desktop_app.parts_compared.part_kinds.part_kind import Called, PartKind
    from desktop_app.parts_compared.screen.bench_place import BenchPlace
    from desktop_app.repair_jobs.rate_of_use import ShopUse
    from desktop_app.repair_jobs.screen.job_page import JobPage
    from desktop_app.returns_watched.screen.job_place import JobPlace
    from desktop_app.shop_window.made_ahead import MadeAhead
    from desktop_app.shop_window.pages_made import Make, Steps
    from desktop_app.symptom_search.screen.search_place import SearchPlace

QUIET_MS = 700  # after the window is there, before what waits is counted


def furnish(window: MainWindow, record: ShopRecord, *, ahead: bool = False) -> Desk:
    """Put the places of a shop into the window and return its desk.

    With `ahead` their pages are made one after the other before anybody goes there.
    """
    return Places(window, record, ahead=ahead).desk


def _not_kept(page: JobPage) -> Notice | None:
    """Return what of a job's page would be lost with another job; None where nothing would."""
    of = page.number()
    refused = tr(" of {job} is not accepted; it would be lost with another job.", job=of)
    unsent = tr(" of {job} is not sent yet; it would be lost with another job.", job=of)
    return not_accepted(page, refused, tr("Mend or empty it first.")) or not_sent(page, unsent)


class Places(QObject):
    """Makes each place before it is first shown, and leads from one to another."""

    def __init__(self, window: MainWindow, record: ShopRecord, *, ahead: bool) -> None:
        super().__init__(window)
        self._window = window
        self._ahead = ahead
        self._maker: MadeAhead | None = None
        self.desk = Desk(record, self)
        self._words = ShopWords(record)
        self._kinds_changed = False
        self._job_open: int | None = None
        window.attend(self.desk)
        self.desk.changed.connect(self._hear)
        self.desk.names_wanted.connect(self._to_people)
        QTimer.singleShot(QUIET_MS, self, lambda: make_classes(self.desk, self._look_around))
        made: dict[str, Make] = {
            place.ASK: lambda: self._search.page(),
            place.HEARD: self._write_up_page,
            place.WATCH: self._watch_page,
            place.BACK: self._back_page,
            place.MONDAY: self._monday_page,
            place.KINDS: self._kinds_page,
            place.DRAWER: self._drawer_page,
            place.CARD: self._card_page,
            place.RECORDS: self._records_page,
            place.RULES: self._rules_page,
            place.FIRST_RULES: self._first_rules_page,
            place.JOB: self._job_page,
            place.BENCH: lambda: self._bench.page(),
        }
        for name in (*place.ON_RAIL, *(name for name in made if name not in place.ON_RAIL)):
            window.add_place(name, made[name], on_rail=name in place.ON_RAIL)
        stand_above(window, self.desk, self._car_is_here, self._to_search, self._ask_which_shop)
        window.strip.way_back_wanted.connect(self._to_backups)
        self.left = LeftAgain(window, self.desk, self.open_job)

    @cached_property
    def _shelf(self) -> KindShelf:
        return shelf_of(self.desk.record)

    @cached_property
    def _kind_names(self) -> Mapping[str, Called]:
        return self._kinds if "_shelf" in self.__dict__ else kind_names(self.desk.record)

    @cached_property
    def _bench(self) -> BenchPlace:
        from desktop_app.parts_compared.screen.bench_place import BenchPlace

        kinds, leave = (lambda: self._kinds), (lambda: self._window.go_to(place.JOB))
        return BenchPlace(self._window, self.desk, place.BENCH, kinds, leave)

    @cached_property
    def _jobs(self) -> JobPlace:
        from desktop_app.returns_watched.screen.job_place import JobPlace

        read = self._read_symptoms, self._read_conditions
        jobs = JobPlace(self.desk, lambda: self._kinds, self._names, *read)
        jobs.judge_wanted.connect(self._judge)
        jobs.bench_wanted.connect(self._to_bench)
        return jobs

    @property
    def _kinds(self) -> Mapping[str, PartKind]:
        return self._shelf.kinds

    @property
    def _vocabulary(self) -> Vocabulary:
        return self._words()

    def _names(self) -> dict[str, str]:
        return {group.id: group.shown for group in self._vocabulary.groups}

    def _read_symptoms(self, words: str) -> tuple[str, ...]:
        return tuple(group.id for group in self._vocabulary.groups_in(words))

    def _read_conditions(self, words: str) -> tuple[str, ...]:
        return self._vocabulary.conditions_in(words)

    @cached_property
    def _search(self) -> SearchPlace:
        from desktop_app.symptom_search.screen.search_place import SearchPlace

        words, kinds = (lambda: self._vocabulary), (lambda: self._kind_names)
        return SearchPlace(self.desk, words, kinds, self.open_job, self._car_is_here)

    def _write_up_page(self) -> QWidget:
        from desktop_app.repair_jobs.screen.write_up_page import WriteUpPage
        from desktop_app.returns_watched.screen.promise_line import promise_line

        drafts = Drafts(self.desk.record.folder)
        promised = promise_line(self.desk, self._names())
        similar = self._search.similar_jobs()
        page = WriteUpPage(
            self.desk, drafts, self._read_symptoms, self._read_conditions, promised, similar
        )
        page.heard.connect(similar.hear)
        page.taken_in.connect(self.open_job)
        page.job_wanted.connect(self.open_job)
        return page

    def _watch_page(self) -> QWidget:
        from desktop_app.returns_watched.screen.under_watch_page import UnderWatchPage

        page = UnderWatchPage(self.desk)
        page.job_chosen.connect(self.open_job)
        return page

    def _back_page(self) -> QWidget:
        from desktop_app.returns_watched.screen.its_back_page import ItsBackPage

        page = ItsBackPage(self.desk, self._names(), lambda: self._kinds)
        page.job_chosen.connect(self.open_job)
        page.waiting.connect(self._show_waiting)
        return page

    def _monday_page(self) -> QWidget:
        from desktop_app.weekly_report.screen.monday_book_page import MondayBookPage

        page = MondayBookPage(self.desk, self._names(), lambda: self._kinds)
        page.job_chosen.connect(self.open_job)
        return page

    def _kinds_page(self) -> QWidget:
        from desktop_app.parts_compared.screen.part_kinds_page import PartKindsPage

        return PartKindsPage(self.desk, lambda: self._shelf, kinds_of())

    def _drawer_page(self) -> QWidget:
        from desktop_app.parts_compared.screen.tool_drawer_page import ToolDrawerPage

        return ToolDrawerPage(self.desk)

    def _card_page(self) -> QWidget:
        from desktop_app.part_photos.screen.bench_card_page import BenchCardPage
        from desktop_app.parts_compared.photo_reading_actions import follow

        return BenchCardPage(self.desk, follow)

    def _rules_page(self) -> Steps:
        from desktop_app.rules_places import rules_page

        return rules_page(self.desk, lambda: self._kinds, self._ask_which_shop)

    def _first_rules_page(self) -> QWidget:
        from desktop_app.rules_places import first_rules_page

        page = first_rules_page(self.desk)
        page.done.connect(self._car_is_here)
        page.done.connect(lambda: self._window.take_place_away(place.FIRST_RULES))
        return page

    def _job_page(self) -> Steps:
        similar = self._search.similar_jobs()
        page = yield from self._jobs.page(similar, similar.hear)
        page.job_wanted.connect(self.open_job)
        page.another_concern.connect(self._another_concern)
        page.sheet_wanted.connect(self._show_sheet)
        page.history_wanted.connect(self._show_history)
        if self._job_open is not None:  # made anew, for the kinds have changed
            page.open_job(self._job_open)
        return page

    def _records_page(self) -> Steps:
        from desktop_app.records_place import read_with, records_page

        page = yield from records_page(
            self.desk, lambda: read_with(self._kinds.values(), self._vocabulary)
        )
        page.job_wanted.connect(self.open_job)
        page.shop_wanted.connect(self._window.shop_wanted)
        return page

    @Slot(int)
    def open_job(self, job_id: int) -> None:
        """Show a job's page."""
        from desktop_app.repair_jobs.screen.job_page import JobPage

        if self._kinds_changed and self._window.renew(place.JOB):
            self._kinds_changed = False
        self._job_open = None  # the one that is named now is opened below
        page = self._window.page(place.JOB)
        assert isinstance(page, JobPage)
        if page.job_id not in (None, job_id):
            save_everything(page)
            refused = _not_kept(page)
            if refused is not None:
                self._window.go_to(place.JOB)
                self._window.strip.tell(refused)
                return
        page.open_job(job_id)
        self._job_open = job_id
        self._window.name_place(place.JOB, page.number() or place.JOB)
        self._window.go_to(place.JOB)

    @Slot(int, int)
    def _judge(self, earlier: int, later: int) -> None:
        from desktop_app.returns_watched.screen.its_back_page import ItsBackPage

        self._window.go_to(place.BACK)
        page = self._window.page(place.BACK)
        assert isinstance(page, ItsBackPage)
        page.show_pair(earlier, later)

    @Slot(int)
    def _another_concern(self, job_id: int) -> None:
        from desktop_app.repair_jobs.actions import add_job
        from desktop_app.repair_jobs.stored_reading import read_job

        job = self.desk.ask(read_job, job_id)
        if job is not None:
            done = self.desk.do(add_job, job.visit_id, "")
            if done is not None and done.made is not None:
                self.open_job(done.made)

    @Slot(int, object, object)
    def _to_bench(self, pair_id: int, old: int | None, new: int | None) -> None:
        self._bench.lay(pair_id, old, new)

    @Slot(int)
    def _show_sheet(self, job_id: int) -> None:
        from desktop_app.parts_compared.screen.sheet_preview import SheetPreview

        self._sheet = SheetPreview(self.desk, self._kinds, job_id, self._window)
        self._sheet.show()

    @Slot(int)
    def _show_history(self, job_id: int) -> None:
        from desktop_app.job_history.screen.history_window import HistoryWindow

        self._history = HistoryWindow(self.desk, self._kinds, self._names(), job_id, self._window)
        self._history.show()

    @Slot(object)
    def _hear(self, done: Done) -> None:
        if "setting" in done.touched:
            self._window.let_unwanted_go()
        if "own_kind" in done.touched:
            for read in ("_shelf", "_kind_names"):
                self.__dict__.pop(read, None)  # read again when it is asked for
            self._kinds_changed = not self._window.renew(place.JOB)
        if self._maker is not None and done.touched & {"setting", "own_kind"}:
            self._maker.begin_anew()
        if done.touched & {"visit", "return_link", "customer_asked"}:
            self._count_waiting()

    @Slot()
    def _look_around(self) -> None:
        """Load beside the window what the first job needs, and count who is back."""
        from desktop_app.repair_jobs.screen.shop_use import shop_use_kept

        record, today = self.desk.record, self.desk.today()
        changes = shop_use_kept(self.desk).changes

        def load() -> tuple[tuple[KindTrouble, ...], ShopUse | None, int]:
            places_ahead.load_job_page()
            places_ahead.read_a_slip(self._vocabulary)
            use = places_ahead.read_newest_job(record, today, self._names(), self._kinds)
            troubles = self._shelf.troubles
            tables_read().keep()
            return troubles, use, changes

        self.desk.errands.run(tr("Laying the tools out"), load, self._laid_out)

    @Slot(object)
    def _laid_out(self, found: tuple[tuple[KindTrouble, ...], ShopUse | None, int]) -> None:
        from desktop_app.repair_jobs.screen.shop_use import shop_use_kept

        troubles, use, changes = found
        shop_use_kept(self.desk).know(use, changes)
        for trouble in troubles:
            self._window.strip.tell(trouble)
        self._count_waiting()
        self._search.index.look()
        load, then = places_ahead.load_other_places, self._make_ahead
        self.desk.errands.run(tr("Laying the tools out"), load, then)
        from desktop_app.part_photos.screen.phone_status import phone_status

        self._window.add_to_top(phone_status(self.desk))

    @Slot(object)
    def _make_ahead(self, _loaded: object) -> None:
        if self._ahead:
            from desktop_app.shop_window.made_ahead import MadeAhead

            self._maker = MadeAhead(
                self._window, self.desk, (place.HEARD, place.JOB, *place.ON_RAIL)
            )

    @Slot()
    def _count_waiting(self) -> None:
        from desktop_app.returns_watched.stored_returns import count_waiting

        record, names = self.desk.record, self._names()
        today = self.desk.today()

        def count() -> int:
            with record.reading() as connection:
                return count_waiting(connection, today, names)

        self.desk.errands.run(tr("Looking who is back"), count, self._show_waiting)

    @Slot(int)
    def _show_waiting(self, number: int) -> None:
        self._window.name_place(place.BACK, f"{place.BACK} ({number})" if number else place.BACK)

    @Slot()
    def _car_is_here(self) -> QWidget:
        self._window.go_to(place.HEARD)
        return self._window.page(place.HEARD)

    @Slot()
    def _to_people(self) -> None:
        from desktop_app.repair_jobs.screen.people_box import PeopleBox
        from desktop_app.shop_window.page import ReadingPage

        self._window.go_to(place.RULES)
        page = self._window.page(place.RULES).findChild(ReadingPage)
        assert isinstance(page, ReadingPage)
        people = page.findChild(PeopleBox)
        assert isinstance(people, PeopleBox)
        people.look_for_names()
        QTimer.singleShot(0, page, lambda: page.bring_up(people))  # once it is laid out

    @Slot()
    def _ask_which_shop(self) -> None:
        self._window.shop_wanted.emit(None)

    @Slot()
    def _to_backups(self) -> None:
        from desktop_app.records_exchanged.screen.records_page import RecordsPage

        self._window.go_to(place.RECORDS)
        page = self._window.page(place.RECORDS)
        assert isinstance(page, RecordsPage)
        QTimer.singleShot(0, page, page.show_backups)  # once it is laid out

    @Slot()
    def _to_search(self) -> None:
        self._window.go_to(place.ASK)
