"""A verdict of a pair that is counted, shown and explained nowhere would be lost in silence."""

from __future__ import annotations

from typing import get_args

import pytest

from desktop_app.parts_compared.comparison import PairVerdict
from desktop_app.parts_compared.sheet_pair import PAIR_MEANS
from desktop_app.returns_watched.honest_numbers.group_names import NOT_COMPARED, compared_as
from desktop_app.weekly_report.sheets.proof import COMPARED

VERDICTS = get_args(PairVerdict)


@pytest.mark.parametrize("verdict", VERDICTS)
def test_a_job_with_one_pair_is_counted_under_its_verdict(verdict: str) -> None:
    assert compared_as([verdict]) == verdict


def test_each_verdict_has_a_row_of_its_own_and_a_meaning_on_the_sheet() -> None:
    assert set(COMPARED) == {*VERDICTS, NOT_COMPARED}
    assert set(PAIR_MEANS) == set(VERDICTS)
