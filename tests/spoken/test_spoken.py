"""Each language is complete: each text has its words, with the same places for values in them.

After a change of texts: `BENCHWITNESS_WRITE_GOLDEN=1 pytest tests/spoken/test_spoken.py` gathers
them anew; say what is new in `resources/spoken`, by hand or with Qt Linguist, and run it again.
"""

from __future__ import annotations

import ast
import os
import re
from collections.abc import Iterator
from pathlib import Path
from string import Formatter

import pytest
from PySide6.QtCore import QTranslator

from tests.spoken import spoken_codes, spoken_kinds, spoken_symptoms
from tests.spoken.spoken_files import CODES, SPOKEN, gather, gather_words, release, rooms, said_in

WRITE = os.environ.get("BENCHWITNESS_WRITE_GOLDEN") == "1"
#: What is said of the files that come with the program, each with its texts.
IN_FILES = {
    "part_kinds": spoken_kinds.texts,
    "symptoms": spoken_symptoms.texts,
    "trouble_codes": spoken_codes.texts,
}
PATTERNS = re.compile(r"\(\*[^)]*\)")


def fields(text: str) -> list[str]:
    """The places for values in a text, each with how the value is written there."""
    try:
        found = list(Formatter().parse(text))
    except ValueError:
        return ["no places, a lone brace"]
    return sorted({f"{name}!{how}:{form}" for _, name, form, how in found if name is not None})


def ends(text: str) -> tuple[str, str]:
    """The blanks at both ends: texts are put one behind another."""
    return text[: len(text) - len(text.lstrip())], text[len(text.rstrip()) :]


def amiss(text: str, said: str) -> Iterator[str]:
    if not said:
        yield "is not said"
    elif fields(text) != fields(said):
        yield f"has other places for values in “{said}”"
    elif ends(text) != ends(said):
        yield f"begins or ends otherwise in “{said}”"
    elif PATTERNS.findall(text) != PATTERNS.findall(said):
        yield f"names other files in “{said}”"


def bring_up_to_date(room: str, into: Path, code: str) -> None:
    if room in IN_FILES:
        gather_words(IN_FILES[room](), into, code)
    else:
        gather(rooms()[room], into, code)


def unseen_by_qt(source: str) -> list[int]:
    """The lines with a text inside a field of an f-string, where Qt's tool finds none."""
    return [
        call.lineno
        for field in ast.walk(ast.parse(source))
        if isinstance(field, ast.FormattedValue)
        for call in ast.walk(field)
        if isinstance(call, ast.Call)
        and isinstance(call.func, ast.Name)
        and call.func.id in {"tr", "marked"}
        and isinstance(call.args[0], ast.Constant)
    ]


def test_no_text_stands_where_qt_does_not_look() -> None:
    assert unseen_by_qt("say(f'{tr(\"worn\")}, {tr(word)}')") == [1]
    found = [
        f"{file.name}:{line}"
        for files in rooms().values()
        for file in files
        for line in unseen_by_qt(file.read_text("utf-8"))
    ]
    assert found == []


@pytest.mark.parametrize("room", [*rooms(), *IN_FILES])
@pytest.mark.parametrize("code", CODES)
def test_every_text_of_a_folder_is_said(code: str, room: str, tmp_path: Path) -> None:
    kept, now = SPOKEN / code / f"{room}.ts", tmp_path / "now.ts"
    if WRITE:
        bring_up_to_date(room, kept, code)
    bring_up_to_date(room, now, code)
    texts, said = said_in(now), said_in(kept)
    wrong = [f"“{text}” {why}" for text in texts for why in amiss(text, said.get(text, ""))]
    gone = [f"“{text}” is said and stands nowhere" for text in said if text not in texts]
    assert "\n".join(wrong + gone) == ""


@pytest.mark.parametrize("code", CODES)
def test_a_text_is_said_alike_in_every_folder(code: str) -> None:
    seen: dict[str, str] = {}
    other = []
    for file in sorted((SPOKEN / code).glob("*.ts")):
        for text, said in said_in(file).items():
            if seen.setdefault(text, said) != said:
                other.append(f"{file.name}: “{text}” is “{said}” and “{seen[text]}”")
    assert "\n".join(other) == ""


@pytest.mark.parametrize("code", CODES)
def test_what_the_program_reads_is_what_stands_in_the_files(code: str, tmp_path: Path) -> None:
    if WRITE:
        release(code, SPOKEN / f"{code}.qm")
    made = tmp_path / "made.qm"
    release(code, made)
    assert (SPOKEN / f"{code}.qm").read_bytes() == made.read_bytes()
    words = QTranslator()
    assert words.load(str(made))
    for file in (SPOKEN / code).glob("*.ts"):
        for text, said in said_in(file).items():
            assert words.translate("", text) == said
