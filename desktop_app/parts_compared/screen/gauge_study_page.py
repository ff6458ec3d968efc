"""A gauge study of one instrument: readings ended by Enter, and what they say at once."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QGridLayout, QLineEdit, QPushButton

from desktop_app.language import tr
from desktop_app.parts_compared import gauge_actions as deeds
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.instruments.gauge_plan import MOST_PARTS, MOST_TRIALS, GaugePlan
from desktop_app.parts_compared.instruments.gauge_sentence import missing_sentence, study_sentences
from desktop_app.parts_compared.instruments.gauge_study import GaugeReading, study
from desktop_app.parts_compared.instruments.instrument import tool_words
from desktop_app.parts_compared.screen.gauge_readings_grid import GaugeReadingsGrid
from desktop_app.parts_compared.screen.instrument_table import ToolShown
from desktop_app.parts_compared.shown_value import amount
from desktop_app.parts_compared.stored_gauge import StudyKept, latest_study, repeatability_of
from desktop_app.parts_compared.typed_value import typed_value
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import ChoiceField, Labelled, LineField
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.in_sight import bring_up
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label
from desktop_app.shop_window.typing_pause import TypingPause

HOW = tr(
    "Read the same part again and again, taken off and set up anew each time. One "
    "person and ten readings will do; a second person shows what lies between two "
    "hands. What the readings scatter can then stand for this instrument in place of "
    "the usual figure."
)
IN_USE = tr("This study's own figure counts already.")
TOO_FEW = tr("The readings are too few for a figure of this instrument's own, as said above.")
USUAL = tr("The usual figure is what counts now.")
NOBODY = tr("first person")


class GaugeStudyPage(Section):
    """The field for the next reading, the grid of all, the figures, and the button to use them."""

    closed = Signal()

    def __init__(self, desk: Desk, tool: ToolShown) -> None:
        super().__init__(tr("Gauge study: {name}", name=tool_words(tool.name)))
        self._desk = desk
        self._tool = tool
        self._drafts = Drafts(desk.record.folder)
        self._kept: StudyKept | None = None
        self._another = False
        draft = self._drafts.read(self._draft())
        self._names = [draft.get("first", "") or desk.record.who or NOBODY, draft.get("second", "")]
        self._parts = _whole(draft.get("parts", ""), 1, MOST_PARTS)
        self._trials = _whole(draft.get("trials", ""), 10, MOST_TRIALS)
        self._about = LineField(tr("What is read"), self._say_about)
        self._about.show_value(draft.get("about", ""))
        self._people = [
            LineField(name, partial(self._name, place))
            for place, name in enumerate((tr("First person"), tr("Second person, if there is one")))
        ]
        self._counts = (
            ChoiceField(tr("Parts"), _choices(1, MOST_PARTS), partial(self._plan, "_parts")),
            ChoiceField(
                tr("Readings of each"), _choices(2, MOST_TRIALS), partial(self._plan, "_trials")
            ),
        )
        self._who = ChoiceField(tr("Who reads now"), [], self._read_on)
        self._field = QLineEdit(draft.get("typed", ""))
        self._field.setMaxLength(200)
        self._field.returnPressed.connect(self._enter)
        # Typing that rests is kept, whatever happens to the program.
        self._pause = TypingPause(self, self.keep_draft)
        self._field.textEdited.connect(self._pause.typed)
        self._box = Labelled(tr("Next reading"), self._field)
        self._grid = GaugeReadingsGrid()
        self._grid.taken_out.connect(self._take_out)
        self._said = plain_label("", wrap=True)
        self._missing = plain_label("", wrap=True)
        self._counting = plain_label("", "quiet", wrap=True)
        self._use = QPushButton(tr("Use from now on"))
        self._back = QPushButton(tr("Go back to the usual figure"))
        self._lay_out()
        desk.changed.connect(self._heard)
        self.show_study()

    @property
    def tool(self) -> ToolShown:
        """The instrument that is studied."""
        return self._tool

    def _lay_out(self) -> None:
        self.column.addWidget(plain_label(HOW, "quiet", wrap=True))
        grid = QGridLayout()
        boxes = [Labelled(one.accessibleName(), one) for one in (self._about, *self._people)]
        boxes += [Labelled(one.accessibleName(), one) for one in self._counts]
        boxes += [Labelled(tr("Who reads now"), self._who)]
        for place, box in enumerate(boxes):
            grid.addWidget(box, place // 3, place % 3)
        self.column.addLayout(grid)
        for widget in (self._box, self._grid):
            self.column.addWidget(widget)
        self._use.setObjectName("next")
        row = FlowRow()
        for button, press in (
            (self._use, self._use_it),
            (self._back, self._go_back),
            (QPushButton(tr("Take the chosen reading out")), self._grid.take_chosen_out),
            (QPushButton(tr("Begin another study")), self._begin_another),
            (QPushButton(tr("Close the study")), self.closed.emit),
        ):
            button.clicked.connect(press)
            row.addWidget(button)
        for label in (self._said, self._missing, self._counting):
            self.column.addWidget(label)
        self.column.addLayout(row)

    def begin_typing(self) -> None:
        """Put the cursor where the next reading is typed, and bring the study into view."""
        self._field.setFocus()
        bring_up(self._field)

    def show_tool(self, tool: ToolShown) -> None:
        """Show the study with what is known of the instrument by now."""
        self._tool = tool
        self.show_study()

    @Slot()
    def keep_draft(self) -> None:
        """Keep the plan and what is typed, to be there when the study is opened again."""
        self._drafts.keep(
            self._draft(),
            {
                "about": self._about.text() if self._kept is None else "",
                "first": self._names[0] if self._names[0] != NOBODY else "",
                "second": self._names[1],
                "parts": str(self._parts) if self._parts != 1 else "",
                "trials": str(self._trials) if self._trials != 10 else "",
                "typed": self._field.text(),
            },
        )

    def show_study(self) -> None:
        """Read the study again and show what it says."""
        if not self._another:
            self._kept = self._desk.ask(latest_study, self._tool.id)
        readings = self._readings()
        seen = list(dict.fromkeys(one.person for one in readings))
        for place, name in enumerate(self._names):
            if name not in seen and (fresh := [s for s in seen if s not in self._names]):
                self._names[place] = fresh[0]
        self._about.show_value(self._kept.about if self._kept else self._about.text())
        for field, name in zip(self._people, self._names, strict=True):
            field.show_value(name)
        plan = self._room()
        for choice, count in zip(self._counts, (plan.parts, plan.trials), strict=True):
            choice.show_value(count)
        self._show_who(plan)
        self._show_figures(plan)

    def _readings(self) -> tuple[GaugeReading, ...]:
        return tuple(self._kept.readings.values()) if self._kept else ()

    def _room(self) -> GaugePlan:
        names = tuple(dict.fromkeys(one for one in self._names if one)) or (NOBODY,)
        return GaugePlan(names, self._parts, self._trials).with_room_for(self._readings())

    def _show_who(self, plan: GaugePlan) -> None:
        """Offer the people; whoever has read everything hands over to the next."""
        chosen = str(self._who.currentData() or "")
        following = plan.next_place(self._readings(), chosen)
        if [self._who.itemData(i) for i in range(self._who.count())] != list(plan.people):
            self._who.set_choices([(one, one) for one in plan.people])
        self._who.show_value(following[0] if following else chosen)
        if following is None:
            self._box.hint(tr("Every place is filled. Plan more readings, or begin another study."))
        else:
            unit, _ = self._unit()
            person, part, trial = following
            values = {"person": person, "reading": trial, "unit": unit}
            self._box.hint(
                tr(
                    "{person}, part {part}, reading {reading}, in {unit}; Enter writes it down",
                    part=part,
                    **values,
                )
                if plan.parts > 1
                else tr("{person}, reading {reading}, in {unit}; Enter writes it down", **values)
            )

    def _show_figures(self, plan: GaugePlan) -> None:
        readings, who = self._readings(), str(self._who.currentData() or "")
        unit, factor = self._unit()
        result = study(readings)
        in_use = self._kept is not None and self._kept.taken_over
        self._grid.show_readings(
            plan,
            self._kept.readings if self._kept else {},
            plan.next_place(readings, who),
            factor,
            self._tool.resolution * factor,
        )
        self._said.setText(
            "\n".join(study_sentences(result, self._tool.instrument(), unit, factor))
        )
        self._missing.setText("" if in_use else missing_sentence(plan, readings, who))
        self._missing.setVisible(not in_use)
        own = self._desk.ask(repeatability_of, self._tool.id)
        spread = self._tool.instrument().usual_spread if own is None else own
        figure = amount(float(f"{spread * factor:.2g}"), unit)
        here = tr(" It comes from this study, whose readings stay as they are.") if in_use else ""
        self._counting.setText(
            tr(
                "What counts now is the usual figure, {figure}.{from_here}",
                figure=figure,
                from_here=here,
            )
            if own is None
            else tr(
                "What counts now is our own figure, {figure}.{from_here}",
                figure=figure,
                from_here=here,
            )
        )
        too_few = "" if result.enough else TOO_FEW
        off_because(self._use, IN_USE if in_use else too_few)
        off_because(self._back, "" if own is not None else USUAL)

    def _unit(self) -> tuple[str, float]:
        return shop_unit(self._tool.unit, self._desk.rules.length_unit)

    def _draft(self) -> str:
        return f"gauge study of instrument {self._tool.id}"

    @Slot()
    def _enter(self) -> None:
        """Write the typed reading into the next place; a refused one stays in its field."""
        text, unit = self._field.text().strip(), self._tool.unit
        if not text:
            return
        bare = not any(letter.isalpha() or letter in "\"″'" for letter in text)
        inches = bare and self._unit()[0] == "in"
        try:
            value = typed_value(f"{text} in" if inches else text, unit)
        except ShopTrouble as trouble:
            self._box.hint(f"✎ {trouble.sentence()}")
            self._field.selectAll()
            return
        place = self._room().next_place(self._readings(), str(self._who.currentData() or ""))
        if place is None:
            return  # the line beneath the field says so
        begun = self._kept
        if begun is None:
            self._another = False
            done = self._desk.do(deeds.begin_study, self._tool.id, self._about.text(), place, value)
        else:
            done = self._desk.do(deeds.add_reading, begun.id, place, value)
        if done is not None:
            self._field.clear()
            self.keep_draft()

    def _say_about(self, text: str) -> object:
        if self._kept is None:
            self.keep_draft()
            return text  # goes into the record with the first reading
        return self._desk.do(deeds.say_what_is_read, self._kept.id, text)

    def _name(self, place: int, text: str) -> object:
        """Name a person, together with what he or she has read already."""
        before, name = self._names[place], " ".join(text.split())
        read = any(one.person == before for one in self._readings())
        if self._kept and read and not self._rename(self._kept.id, before, name):
            return None
        self._names[place] = name
        self.keep_draft()
        self.show_study()
        return name or NOBODY

    def _rename(self, study_id: int, before: str, name: str) -> bool:
        return self._desk.do(deeds.name_person, study_id, before, name) is not None

    def _plan(self, which: str, count: int) -> None:
        setattr(self, which, count)
        self.keep_draft()
        self.show_study()

    def _read_on(self, _who: str) -> None:
        self.show_study()
        self._field.setFocus()

    @Slot(int)
    def _take_out(self, row: int) -> None:
        if self._kept is not None:
            self._desk.do(deeds.take_reading_out, self._kept.id, row)

    @Slot()
    def _use_it(self) -> None:
        if self._kept is not None:
            self._desk.do(deeds.use_from_now_on, self._kept.id)

    @Slot()
    def _go_back(self) -> None:
        self._desk.do(deeds.back_to_usual, self._tool.id)

    @Slot()
    def _begin_another(self) -> None:
        """Show an empty study; it is begun with its first reading, and the others stay kept."""
        self._another, self._kept = True, None
        self.show_study()
        self.begin_typing()

    @Slot(object)
    def _heard(self, done: Done) -> None:
        if {"gauge_study", "gauge_reading", "instrument", "setting"} & done.touched:
            self.show_study()


def _choices(least: int, most: int) -> list[tuple[int, str]]:
    return [(one, str(one)) for one in range(least, most + 1)]


def _whole(text: str, otherwise: int, most: int) -> int:
    return min(most, max(1, int(text))) if text.isdecimal() else otherwise
