"""What may be told of a log: where the program went wrong, and no word of a customer."""

from __future__ import annotations

import logging
from pathlib import Path

import pytest

from desktop_app.shop_record.own_program.log_told import told_lines
from desktop_app.shop_window.last_resort import keep_log

PRIVATE = ("Abernathy", "TH 1042", "0171", "grandmother", "sam", "Surgery")


def said_of(folder: Path) -> str:
    return "\n".join(told_lines((folder / "benchwitness.log").read_text("utf-8").splitlines()))


def go_wrong(words: str) -> None:
    raise ValueError(words)


@pytest.mark.expects_trouble_log
def test_of_an_error_its_kind_and_its_way_stay(tmp_path: Path) -> None:
    close, log = keep_log(tmp_path), logging.getLogger("benchwitness")
    typed = "Mrs Abernathy\n    TH 1042 stalls\nAbernathy: call 0171\n  her grandmother drives"
    try:
        try:
            go_wrong(typed)
        except ValueError as error:
            raise LookupError(f"no row for {typed}") from error
    except LookupError:
        log.exception("errand “%s” failed", "Reading Abernathy.csv")
    close()
    said = said_of(tmp_path)
    assert "ERROR errand …" in said
    assert "ValueError (what it says is left out)" in said
    assert "LookupError (what it says is left out)" in said
    assert 'raise LookupError(f"no row for {typed}") from error' in said  # the program's own line
    assert ", in go_wrong" in said
    assert [word for word in PRIVATE if word in said] == []
    assert "lines are left out)" in said
    assert str(Path(__file__).parent) not in said


@pytest.mark.parametrize(
    ("logged", "told"),
    [
        ("not foreseen", "not foreseen"),
        ("Qt: QPainter::begin: Paint device returned engine == 0, type: 2",) * 2,
        ("Qt: cannot open /media/sam/Surgery sheet.pdf", "Qt: cannot open …"),
        ("Qt: cannot open C:\\Users\\sam\\Surgery.pdf", "Qt: cannot open C: …"),
        ("Qt: no such family 'Surgery'", "Qt: no such family …"),
        ("phone's photo not kept: No space left on device",) * 2,
        ("Abernathy rang", "…"),
    ],
)
def test_of_what_was_noted_the_programs_own_words_stay(logged: str, told: str) -> None:
    line = f"2026-11-16 12:00:01,123 WARNING {logged}"
    assert list(told_lines([line])) == [f"2026-11-16 12:00:01 WARNING {told}"]


def test_what_is_no_line_of_a_log_is_left_out() -> None:
    lines = ["Abernathy", "", "Smith: 0171", "2026-11-16 12:00:01,123 INFO not foreseen"]
    assert list(told_lines(lines)) == [
        "(2 lines are left out)",
        "2026-11-16 12:00:01 INFO not foreseen",
    ]


def test_a_fatal_error_of_a_library_is_told_with_its_way() -> None:
    lines = [
        "Fatal Python error: Segmentation fault",
        "",
        "Current thread 0x00007f (most recent call first):",
        '  File "/media/sam/main/desktop_app/program.py", line 12 in open_shop',
    ]
    assert list(told_lines(lines)) == [
        lines[0],
        lines[2],
        "  desktop_app/program.py, line 12, in open_shop",
    ]
