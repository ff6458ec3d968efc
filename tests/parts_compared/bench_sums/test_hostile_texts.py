"""Whatever is typed into a bench sum is worked out or refused in words, never a mistake of ours."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.sums_offered import SUMS, work_out
from desktop_app.shop_record.trouble import ShopTrouble

TEXTS = st.sampled_from(
    [
        *(";", ";;;;", "", " ", "0", "1e-7", "0.0000001", "1000000", "999999", "-1", "1/0", "1/3"),
        *("27", "0.03", "5; 5; 5", "1;2;3", "1-3-4-2", "3/3/4/10", "1 2 / 3 4", "6PK1230"),
        *("12.75 mm; 0.5 in", "1e400", "nan", "inf", "٣", "½", "360", "90", "10"),
    ]
)


@pytest.mark.parametrize("sum_id", SUMS)
@given(data=st.data())
@settings(max_examples=120, deadline=None)
def test_any_texts_end_in_a_sum_or_in_words(sum_id: str, data: st.DataObject) -> None:
    typed = {field.name: data.draw(TEXTS) for field in SUMS[sum_id].fields}
    expanded: float | None = None
    try:
        found = work_out(sum_id, typed)
        said, expanded = found.sentence, found.expanded
    except ShopTrouble as trouble:
        said = trouble.sentence()
    assert said
    assert expanded is None or math.isfinite(expanded)


@pytest.mark.parametrize(
    ("sum_id", "typed", "says"),
    [
        ("pad-life", {"first": "11", "now": ";", "limit": "2", "distance": "1"}, "nothing is"),
        ("bolt-circle", {"studs": "5", "chord": ";"}, "nothing is entered"),
        (
            "pad-life",
            {"first": "11", "now": "9;" * 70 + "1", "limit": "2", "distance": "1"},
            "71 values",
        ),
    ],
)
def test_an_empty_or_endless_list_is_refused(sum_id: str, typed: dict[str, str], says: str) -> None:
    with pytest.raises(ShopTrouble, match=says):
        work_out(sum_id, typed)
