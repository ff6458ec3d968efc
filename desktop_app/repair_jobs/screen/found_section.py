"""Found: codes before anything is cleared, what was seen, and the cause in one sentence."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.code_rows import CodeRows
from desktop_app.repair_jobs.screen.person_field import PersonField
from desktop_app.repair_jobs.screen.row_field import RowField
from desktop_app.repair_jobs.screen.search_fields import SearchFields
from desktop_app.repair_jobs.screen.which_holds import WhichHolds
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.systems import SYSTEMS
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.field_rows import FieldRows
from desktop_app.shop_window.fields import Labelled, WordsField
from desktop_app.shop_window.flow_row import empty
from desktop_app.shop_window.kept_choice import KeptChoiceField, put_back
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import CautionBox, plain_label

CAUTIONS = {
    "ignition": tr(
        "Ignition voltage can injure and can stop a heart, above all with a pacemaker: "
        "ignition off and key out before leads, cap or coils are touched."
    ),
    "fuel": tr(
        "Fuel and its vapour burn and explode: no sparks or flames, pressure let off first."
    ),
    "brakes": tr("Brakes can fail: only people who may work on them, by the maker's procedure."),
    "cooling": tr(
        "Hot coolant scalds: engine cold and without pressure before the system is opened."
    ),
    "belt-drive": tr("Belts and fans take fingers: engine off and key out."),
    "charging": tr("Battery ground off first, on last: a shorted cable welds and burns."),
    "starting": tr("Battery ground off first, on last: a shorted cable welds and burns."),
    "wheels": tr("A lifted car must stand on stands, wheels chocked; a wheel can come off."),
    "suspension": tr("Springs under load can kill; a lifted car must stand on stands."),
    "steering": tr("Steering that fails kills: only people who may work on it."),
    "restraints": tr("Airbag circuits: qualified people and the maker's procedure only."),
    "exhaust": tr("Hot exhaust burns; its gas kills in a closed room."),
}


class FoundSection(Section):
    """From the codes to the cause; "not caught" is an answer too."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(tr("Found"))
        self._desk = desk
        self._job: JobView | None = None
        self._caution: CautionBox | None = None
        systems = [("", tr("not said")), *((s.id, s.name) for s in SYSTEMS)]
        self._system = KeptChoiceField(desk, tr("System"), systems, self._save_system)
        self._person = PersonField(desk, tr("Technician"), self._save_person)
        self._search = SearchFields(desk)
        self._codes = CodeRows(desk, "found")
        self._findings = QVBoxLayout()
        drafts = Drafts(desk.record.folder)
        self._new_finding = RowField(tr("What was seen or tried"), self._add_finding, drafts)
        self._new_finding.setPlaceholderText(tr("What was seen or tried: one finding, then Enter"))
        self._cause = WordsField(tr("Cause: X because Y, shown by Z"), self._save_cause, 2)
        self._codes.no_more.connect(self._new_finding.setFocus)
        self._new_finding.no_more.connect(self._cause.setFocus)
        self._cause_box = Labelled(tr("Cause: X because Y, shown by Z"), self._cause)
        self._holds = WhichHolds(desk, self._cause_box)
        self._not_caught = QPushButton(tr("⊘  Not caught"))
        self._not_caught.setCheckable(True)
        self._not_caught.clicked.connect(self._say_not_caught)
        self._place_for_caution = QVBoxLayout()
        self._lay_out()

    def show_job(self, job: JobView) -> None:
        """Show what was found on a job."""
        if self._job is not None and self._job.id != job.id:
            self._holds.leave()
        if self._job is None or self._job.id != job.id:
            self._new_finding.begin(f"finding-{job.id}")
        self._job = job
        people = self._desk.ask(people_here) or ()
        names = [*people]
        if job.technician_id is not None and all(p[0] != job.technician_id for p in people):
            names.append((job.technician_id, job.technician))
        self._person.show_people((None, tr("not said")), names)
        self._person.show_value(job.technician_id, job.id)
        self._system.show_value(job.system, job.id)
        self._search.show_job(job)
        self._codes.show_job(job)
        self._holds.show_kept(job.cause, job.cause)
        self._not_caught.setChecked(job.cause_found is False)
        self._show_findings(job)
        self._show_caution(job.system)

    def answer_field(self, about: str, _pair: int | None) -> QWidget | None:
        """Return where the cause, the technician or the system is said."""
        fields = {"cause": self._cause, "technician": self._person, "system": self._system}
        return fields.get(about)

    def _lay_out(self) -> None:
        system = Labelled(tr("System"), self._system)
        person = Labelled(tr("Technician"), self._person)
        searched = self._search.who_box, self._search.hours_box
        self.column.addWidget(FieldRows((system, person, *searched), 2))
        self.column.addLayout(self._place_for_caution)
        self.column.addWidget(plain_label(tr("Codes, saved before anything is cleared")))
        self.column.addWidget(self._codes)
        self.column.addWidget(plain_label(tr("Findings: look before you measure")))
        self.column.addLayout(self._findings)
        self.column.addWidget(self._new_finding)
        self.column.addWidget(self._cause_box)
        row = QHBoxLayout()
        row.addWidget(self._not_caught)
        too = plain_label(tr("is an answer too: say above what was tried."), "quiet", wrap=True)
        row.addWidget(too, 1)
        self.column.addLayout(row)

    def _show_findings(self, job: JobView) -> None:
        empty(self._findings)
        for check in job.checks:
            if check.kind != "inspection":
                continue
            line = QWidget()
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            row.addWidget(plain_label(f"–  {check.words}", wrap=True), 1)
            out = QPushButton("✕")
            out.setAccessibleName(tr("Take out the finding {words}", words=check.words))
            out.setProperty("row", check.id)
            out.clicked.connect(self._strike)
            row.addWidget(out)
            self._findings.addWidget(line)

    def _show_caution(self, system: str) -> None:
        if self._caution is not None:
            self._caution.hide()
            self._caution.deleteLater()
            self._caution = None
        if system in CAUTIONS:
            self._caution = CautionBox((CAUTIONS[system],))
            self._place_for_caution.addWidget(self._caution)

    def _save_system(self, system: str) -> object:
        return self._job and self._desk.do(actions.choose_system, self._job.id, system)

    def _save_person(self, person: int | None) -> object:
        return self._job and self._desk.do(actions.choose_technician, self._job.id, person)

    def _save_cause(self, words: str) -> object:
        if self._job is None:
            return None
        return self._holds.save(words, actions.name_cause, self._job.id, words)

    @Slot()
    def _say_not_caught(self) -> None:
        if self._job is None:
            return
        self._cause.save_now()
        says = self._not_caught.isChecked()
        deed = actions.say_not_caught if says else actions.take_not_caught_back
        if self._desk.do(deed, self._job.id) is None:
            put_back(self._not_caught, not says)

    def _add_finding(self, words: str) -> object:
        return self._job and self._desk.do(actions.write_finding, self._job.id, words)

    @Slot()
    def _strike(self) -> None:
        self._desk.do(actions.strike_check, int(self.sender().property("row")))
