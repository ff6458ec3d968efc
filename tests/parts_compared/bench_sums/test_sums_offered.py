"""The list of bench sums, and filling them in."""

from __future__ import annotations

import math
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sums_offered import SUMS, sums_for, work_out
from desktop_app.parts_compared.bench_sums.typed_list import list_parts, typed_groups, typed_wholes
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.shop_record.trouble import ShopTrouble

KINDS = Path(__file__).resolve().parents[3] / "resources" / "part_kinds"
FILLED: dict[str, dict[str, str]] = {
    "rotor-gap": {"terminal_radius": "28.4", "old_tip_radius": "26.9", "new_tip_radius": "27.45"},
    "rotor-phase": {"terminal_radius": "28.4", "tip_radius": "27.45", "angle": "4"},
    "spark-voltage": {
        "rotor_old": "1.5",
        "rotor_new": "0.95",
        "plug_old": "1.1",
        "plug_new": "0.8",
    },
    "misfire-pattern": {"counters": "22/3/2/25", "firing_order": "1-3-4-2"},
    "crossed-leads": {"firing_order": "1-3-4-2", "dead": "1 3"},
    "fuel-trim-split": {"flow": "3.5; 12; 30", "short": "20; 8; 3", "long": "4; 3; 1"},
    "pad-life": {"first": "11", "now": "4", "limit": "2", "distance": "21400"},
    "belt-identity": {"new_marking": "6PK1215", "old_marking": "6PK1230"},
    "belt-run": {"one_pulley": "150", "other_pulley": "60", "centres": "200"},
    "bolt-circle": {"studs": "5", "chord": "63.5"},
    "turned-or-mirrored": {"old": "60", "new": "95"},
    "road-test-worth": {"once_in": "40", "driven": "20"},
}


def worked() -> list[BenchSum]:
    return [work_out(name, typed) for name, typed in FILLED.items()]


def test_every_sum_carries_its_inputs_its_doubt_and_its_limit() -> None:
    assert set(FILLED) == set(SUMS)
    for found, (name, typed) in zip(worked(), FILLED.items(), strict=True):
        labels = [label for label, _ in found.inputs]
        for field in SUMS[name].fields:
            assert (field.name not in typed) or field.label in labels
        assert all(text == text.strip() != "" for _, text in found.inputs)
        assert found.limit_sentence.endswith(".")
        assert found.sentence.endswith((".", "?"))
        in_words = name in (
            "misfire-pattern", "crossed-leads", "road-test-worth", "belt-identity",
            "spark-voltage",
        )  # fmt: skip
        assert (found.expanded is None) == in_words


def test_nothing_promises_that_a_car_may_be_driven() -> None:
    words = [found.sentence + found.limit_sentence for found in worked()]
    for offered in SUMS.values():
        words += [offered.about, offered.caution]
        words += [field.label + field.help for field in offered.fields]
    for text in words:
        assert not re.search(r"\bsafe", text, re.IGNORECASE)


def test_every_form_is_whole() -> None:
    for name, offered in SUMS.items():
        assert offered.id == name
        names = [field.name for field in offered.fields]
        assert len(names) == len(set(names))
        for field in offered.fields:
            assert field.label
            assert (field.kind == "choice") == bool(field.choices)
            assert not field.choices or field.default in field.choices
            assert field.help or field.kind == "choice"


def test_the_kinds_named_are_kinds_of_the_shelf() -> None:
    shelf = {file.stem for file in KINDS.glob("*.toml")}
    for offered in SUMS.values():
        assert set(offered.kinds) <= shelf


def test_a_kind_is_offered_its_own_sums_first() -> None:
    ids = [one.id for one in sums_for("distributor-cap")]
    assert ids[:2] == ["rotor-gap", "rotor-phase"]
    assert ids[-2:] == ["turned-or-mirrored", "road-test-worth"]
    assert [one.id for one in sums_for("relay")] == ["turned-or-mirrored", "road-test-worth"]


@pytest.mark.parametrize("name", list(FILLED))
def test_an_empty_form_says_what_is_missing(name: str) -> None:
    with pytest.raises(ShopTrouble) as caught:
        work_out(name, {})
    assert caught.value.what.startswith(f"{SUMS[name].name}, ")
    assert caught.value.do.startswith("Accepted: ")


@given(st.sampled_from(sorted(FILLED)), st.data())
def test_whatever_is_typed_gives_a_sum_or_says_why_not(name: str, data: st.DataObject) -> None:
    field = data.draw(st.sampled_from([one.name for one in SUMS[name].fields]))
    text = data.draw(st.text(max_size=12) | st.sampled_from(
        ["0", "-1", "1e9", "9999999", "1-1-1-1", "1/0", ";", "1;2", ",", "1 2 3", "0.0001", "NaN"]
    ))  # fmt: skip
    try:
        found, refused = work_out(name, {**FILLED[name], field: text}).value, None
    except ShopTrouble as trouble:
        found, refused = 0.0, trouble
    assert math.isfinite(found)
    assert refused is None or "Accepted: " in refused.sentence()


def test_what_does_not_exist_is_named() -> None:
    with pytest.raises(ShopTrouble, match="There are: rotor-gap"):
        work_out("spin", {})
    with pytest.raises(ShopTrouble, match="Its fields are: studs"):
        work_out("bolt-circle", {"nuts": "5"})


def test_inches_and_a_comma_are_understood() -> None:
    inches = work_out("bolt-circle", {"studs": "5", "chord": "2 1/2 in"})
    comma = work_out("bolt-circle", {"studs": "5", "chord": "63,5"})
    assert inches.value == pytest.approx(comma.value)
    assert dict(inches.inputs)["neighbours apart, middle to middle"] == "63.5 mm"


def test_the_shops_own_calliper_counts_instead_of_the_usual_one() -> None:
    coarse = Instrument("calliper", "mm", 0.1, 0.2)
    usual = work_out("bolt-circle", FILLED["bolt-circle"])
    own = work_out("bolt-circle", FILLED["bolt-circle"], {"calliper": coarse})
    assert usual.expanded is not None
    assert own.expanded is not None
    assert own.expanded > 1.5 * usual.expanded


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("4,1 4,2", ["4,1", "4,2"]),
        ("4.1, 4.2", ["4.1", "4.2"]),
        ("4,1, 4,2", ["4,1", "4,2"]),
        ("4.1,4.2", ["4.1", "4.2"]),
        ("7.5 mm 7.2 mm", ["7.5 mm", "7.2 mm"]),
        ("1 1/2 in; 2 in", ["1 1/2 in", "2 in"]),
        ("-40 −100", ["-40", "−100"]),
        ("60° 120°", ["60°", "120°"]),
    ],
)
def test_lists_of_measured_values(text: str, parts: list[str]) -> None:
    assert list_parts(text) == parts


def test_lists_of_whole_numbers() -> None:
    assert typed_wholes("1-3-4-2") == typed_wholes("1, 3, 4, 2") == typed_wholes("1/3/4/2")
    assert typed_wholes("1.5") is None
    assert typed_groups("1 4 / 2 3") == ((1, 4), (2, 3))
    assert typed_groups("1 4 / x") is None


def test_a_gap_too_small_for_the_formula_gives_no_voltage() -> None:
    with pytest.raises(ShopTrouble) as caught:
        work_out("spark-voltage", {**FILLED["spark-voltage"], "rotor_new": ".01"})
    assert caught.value.what == (
        "Voltage of the spark, new parts: The rotor gap of 0.01 mm in this air is too small for "
        "the formula, so no voltage is given."
    )
    assert caught.value.do.startswith("Accepted: gaps of the new parts")
