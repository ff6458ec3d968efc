"""What a file leaves open before a row of it is read, the answers, and what these settle."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from desktop_app.language import tr
from desktop_app.records_exchanged.date_order import read_day
from desktop_app.records_exchanged.number_words import odometer_in, signs_of
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.survey import Survey
from desktop_app.repair_jobs.odometer_questions import day_in_words

UNIT = "odometer_unit"
_UNITS = {"mi": tr("miles"), "km": tr("kilometres")}


@dataclass(frozen=True, slots=True)
class Answer:
    """One of a question's choices, and what the file's own example is with it."""

    choice: str
    words: str


def open_questions(found: Survey) -> tuple[Question, ...]:
    """Return everything that must be answered, the unit of the odometers too."""
    unit = _unit_question(found)
    return found.questions if unit is None else (*found.questions, unit)


def answers_to(question: Question) -> tuple[Answer, ...]:
    """Return the choices of a question, each with the example as it would be read."""
    says: dict[str, Any] = {
        "date_order": _day_words,
        "decimal_sign": _number_words,
        UNIT: lambda _text, unit: _UNITS[unit],
    }
    words = says[question.option]
    return tuple(Answer(each, words(question.text, each)) for each in question.choices)


def answered(found: Survey, answers: Mapping[str, str]) -> Survey:
    """Return the survey with what was answered (option: choice) laid down.

    A choice that was never asked about changes nothing.
    """
    settled: dict[str, Any] = {}
    for question in open_questions(found):
        choice = answers.get(question.option)
        if choice in question.choices:
            settled[question.option] = choice
    left = tuple(each for each in found.questions if each.option not in settled)
    return replace(found, questions=left, **settled)


def _unit_question(found: Survey) -> Question | None:
    """Ask, unless a column, its header or all of the first readings say it."""
    if "odometer" not in found.columns or UNIT in found.columns or found.odometer_unit:
        return None
    [column] = found.columns["odometer"]
    header, seen = found.headers[column], False
    for row, cells in found.first_rows:
        read = odometer_in(cells[column].strip()) if column < len(cells) else None
        if read is not None and not read[1]:
            says = tr(
                "“{cell}” says no unit, nor does the header “{header}”.",
                cell=cells[column].strip(),
                header=header,
            )
            return Question(UNIT, tuple(_UNITS), row, cells[column].strip(), says)
        seen = seen or read is not None
    if seen:
        return None
    says = tr(
        "The header “{header}” says no unit, and the first rows have no odometer.", header=header
    )
    return Question(UNIT, tuple(_UNITS), found.header_row, header, says)


def _day_words(text: str, order: Any) -> str:
    try:
        day = read_day(text, order)
    except ValueError:
        return tr("{order}: no day at all", order=tr(order))
    return f"{tr(order)}: {day_in_words(day)}" if day is not None else tr(order)


def _number_words(text: str, sign: Any) -> str:
    ways = signs_of(text)
    if sign not in ways:
        return tr("a decimal {sign}: no number at all", sign=tr(sign))
    return tr("a decimal {sign}: {number:f}", sign=tr(sign), number=ways[sign].normalize())
