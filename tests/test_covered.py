"""What counts as run through: a rule that is left in one branch is named, the rest as a whole."""

from __future__ import annotations

import json
from pathlib import Path

from tests.covered import Walked, missed, share, walked

RULE = "desktop_app/parts_compared/wear.py"
DEED = "desktop_app/parts_compared/actions.py"
KEPT = "desktop_app/parts_compared/stored.py"


def test_a_report_tells_lines_and_branches_that_were_not_run(tmp_path: Path) -> None:
    report = tmp_path / "report.json"
    summary = {"num_statements": 8, "num_branches": 4, "covered_lines": 7, "covered_branches": 2}
    file = {"summary": summary, "missing_lines": [5], "missing_branches": [[4, 5], [7, -1]]}
    report.write_text(json.dumps({"files": {RULE: file}}), encoding="utf-8")
    assert walked(report) == [Walked(RULE, 12, 9, ("5", "4 to 5", "7 to -1"))]


def test_a_rule_and_a_deed_have_to_be_run_through_wholly() -> None:
    files = [
        Walked(RULE, 100, 99, ("5",)),
        Walked(DEED, 10, 9, ("7",)),
        Walked(KEPT, 10, 9, ("1",)),
    ]
    assert missed(files) == [f"{RULE}: 99 %, not 5", f"{DEED}: 90 %, not 7"]


def test_the_rest_counts_as_a_whole() -> None:
    assert missed([Walked(KEPT, 100, 89, ("1",))]) == ["the rest: 89.0 %"]
    assert missed([Walked(KEPT, 100, 89, ("1",)), Walked(KEPT, 10, 10, ())]) == []


def test_nothing_at_all_is_run_through() -> None:
    assert share([]) == 100.0
