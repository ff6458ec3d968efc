"""The spark path: what it promises about numbers, ranges and what it refuses to say."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.compressed_air import Air
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.reading import Reading
from desktop_app.parts_compared.sheet_blocks import Cautions, SparkPicture, Words
from desktop_app.parts_compared.sheet_spark import spark_blocks
from desktop_app.parts_compared.spark import (
    ESTIMATE,
    HIGH_VOLTAGE,
    METHOD,
    Gap,
    SparkPath,
    Volts,
    change_sentence,
    gap_volts,
    spark_path,
)
from desktop_app.parts_compared.spark_gaps import NumberedPair, plug_gaps, rotor_gaps
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.record import ShopRecord
from tests.parts_compared.sheet_story import RotorStory, a_rotor, kinds, words_in

GAPS = st.floats(0.15, 5.0)
RATIOS = st.floats(6.0, 14.0)


def volts(found: Volts | None) -> Volts:
    assert found is not None
    return found


def pair(kind: str, dimension: str, old: tuple[float, ...], new: tuple[float, ...]) -> NumberedPair:
    """A pair with one dimension read."""
    readings = [Reading("removed", dimension, old, None)] if old else []
    readings += [Reading("replacement", dimension, new, None)] if new else []
    return NumberedPair(1, compare(kinds()[kind], tuple(readings), ()))


def rotor(old: float, new: float) -> NumberedPair:
    return replace(pair("distributor-rotor", "tip-radius", (old,), (new,)), number=2)


def cap(old: tuple[float, ...], new: tuple[float, ...]) -> NumberedPair:
    return replace(pair("distributor-cap", "terminal-radius", old, new), number=3)


def test_a_worked_example() -> None:
    # 1.50 mm in open air: 24.36 x 0.151988 + 6.72 x 0.389856 = 6.322 kV.
    # 1.10 mm at 10 : 1: 101.325 kPa x 19.9526 at 584.91 K is as dense as 10.1325 bar at 20 C,
    # so 24.36 x 1.114575 + 6.72 x 1.055734 = 34.246 kV.
    path = spark_path(Gap(1.5), Gap(1.1), 10)
    assert volts(path.rotor).kv == pytest.approx(6.322, abs=1e-3)
    assert volts(path.plug).kv == pytest.approx(34.246, abs=2e-3)
    assert volts(path.larger).kv == volts(path.plug).kv
    assert volts(path.sum).kv == pytest.approx(6.322 + 34.246, abs=3e-3)


def test_the_json_keeps_its_contract() -> None:
    said = spark_path(Gap(1.5), Gap(1.1), 9.5).as_json()
    assert list(said) == [
        *("rotor_gap_kv", "plug_gap_kv", "sum_kv", "larger_kv"),
        *("method", "valid", "warnings"),
    ]
    assert said["valid"] is True
    assert said["sum_kv"] == said["rotor_gap_kv"] + said["plug_gap_kv"]
    assert ESTIMATE in said["warnings"]
    assert set(HIGH_VOLTAGE) <= set(said["warnings"])


@pytest.mark.parametrize("gap", [0.0, -0.2, 0.05, 400.0])
def test_outside_the_formula_a_sentence_replaces_the_number(gap: float) -> None:
    path = spark_path(Gap(gap), Gap(1.1), 9.5)
    said = path.as_json()
    assert said["valid"] is False
    assert (said["rotor_gap_kv"], said["sum_kv"], said["larger_kv"]) == (None, None, None)
    assert said["plug_gap_kv"] > 0
    assert "rotor gap" in path.outside[0]
    assert path.outside[0] in path.sentences()
    assert path.outside[0] == said["warnings"][0]


def test_parts_that_touch_are_said_to_touch() -> None:
    assert "touch" in spark_path(Gap(-0.1), Gap(1.1), 9.5).outside[0]


@given(GAPS, GAPS, RATIOS, st.floats(1.01, 2.0))
def test_more_gap_pressure_or_compression_asks_for_more(
    rotor_mm: float, plug_mm: float, ratio: float, more: float
) -> None:
    path = spark_path(Gap(rotor_mm), Gap(plug_mm), ratio)
    wider = spark_path(Gap(rotor_mm * more), Gap(plug_mm * more), ratio)
    denser = spark_path(Gap(rotor_mm), Gap(plug_mm), ratio, Air(101.325 * more))
    squeezed = spark_path(Gap(rotor_mm), Gap(plug_mm), ratio * more)
    warmer = spark_path(Gap(rotor_mm), Gap(plug_mm), ratio, Air(temperature_c=20 * more))
    for other in (wider, denser):
        assert volts(other.rotor).kv > volts(path.rotor).kv
        assert volts(other.plug).kv > volts(path.plug).kv
    assert volts(squeezed.plug).kv > volts(path.plug).kv
    assert squeezed.rotor == path.rotor
    assert volts(warmer.rotor).kv < volts(path.rotor).kv


@given(GAPS, GAPS, RATIOS, st.floats(0, 0.5), st.floats(0, 0.5))
def test_bounds_and_ranges_keep_their_order(
    rotor_mm: float, plug_mm: float, ratio: float, rotor_doubt: float, plug_doubt: float
) -> None:
    path = spark_path(Gap(rotor_mm, rotor_doubt), Gap(plug_mm, plug_doubt), ratio)
    larger, both = volts(path.larger), volts(path.sum)
    assert max(volts(path.rotor).kv, volts(path.plug).kv) == larger.kv
    assert larger.kv <= both.kv <= 2 * larger.kv
    for each in (volts(path.rotor), volts(path.plug), larger, both):
        assert 0 <= each.low_kv <= each.kv <= each.high_kv


@given(GAPS, RATIOS, st.floats(0.01, 0.1), st.floats(-1, 1))
def test_every_gap_within_its_doubt_gives_a_voltage_within_the_range(
    gap: float, ratio: float, doubt: float, where: float
) -> None:
    wide = volts(spark_path(Gap(1), Gap(gap, doubt), ratio).plug)
    one = volts(spark_path(Gap(1), Gap(gap + where * doubt), ratio).plug)
    assert wide.low_kv - 1e-9 <= one.kv <= wide.high_kv + 1e-9


@given(GAPS, GAPS)
def test_without_compression_the_two_gaps_can_change_places(one: float, other: float) -> None:
    path, swapped = spark_path(Gap(one), Gap(other), 1), spark_path(Gap(other), Gap(one), 1)
    assert volts(path.rotor).kv == pytest.approx(volts(swapped.plug).kv)
    assert volts(path.larger).kv == pytest.approx(volts(swapped.larger).kv)
    assert volts(path.sum).kv == pytest.approx(volts(swapped.sum).kv)


def test_the_intake_squeezed_is_not_the_air_under_the_cap() -> None:
    plain = spark_path(Gap(1.5), Gap(1.1), 9.5)
    charged = spark_path(Gap(1.5), Gap(1.1), 9.5, Air(), Air(200))
    warm = spark_path(Gap(1.5), Gap(1.1), 9.5, Air(temperature_c=70), Air())
    assert charged.rotor == plain.rotor
    assert volts(charged.plug).kv > volts(plain.plug).kv
    assert warm.plug == plain.plug
    assert volts(warm.rotor).kv < volts(plain.rotor).kv


@given(RATIOS, st.floats(1.0, 1.4))
def test_the_exponent_of_the_squeezing_leaves_the_voltage_alone(ratio: float, n: float) -> None:
    one, usual = Air().compressed(ratio, n), Air().compressed(ratio)
    assert volts(gap_volts("plug gap", Gap(1.1), one)[0]).kv == pytest.approx(
        volts(gap_volts("plug gap", Gap(1.1), usual)[0]).kv
    )
    assert "exponent" not in METHOD


def test_the_coil_is_asked_for_a_span_with_a_full_cylinder() -> None:
    said = " ".join(spark_path(Gap(1.5), Gap(1.1), 9.5).sentences())
    assert "With a full cylinder the coil must reach about" in said
    assert "less load asks for less" in said
    assert "at least" not in said


def test_a_copied_kind_stays_in_the_spark_path() -> None:
    copied = replace(rotor(33.4, 33.95), like="distributor-rotor")
    copied = replace(copied, compared=replace(copied.compared, kind="our-rotor"))
    assert rotor_gaps([copied, cap((34.9,), (34.88,))]) is not None


def test_a_gap_that_may_be_closed_has_no_lower_end() -> None:
    path = spark_path(Gap(0.2, 0.15), Gap(1.1), 9.5)
    assert volts(path.rotor).low_kv == 0
    assert any("lower end" in words for words in path.outside)


def test_the_change_is_said_with_both_bounds() -> None:
    before, after = spark_path(Gap(1.5), Gap(1.3), 9.5), spark_path(Gap(0.95), Gap(1.0), 9.5)
    said = change_sentence(before, after)
    for path in (before, after):
        assert f"{volts(path.larger).kv:.1f} to {volts(path.sum).kv:.1f} kV" in said
    assert change_sentence(SparkPath(None, None), SparkPath(None, None)) == ""


def test_the_rotor_gap_comes_from_two_radii() -> None:
    taken = rotor_gaps([rotor(33.4, 33.95), cap((34.9,), (34.88,))])
    assert taken is not None
    assert taken.before is not None
    assert taken.after is not None
    assert taken.before.mm == pytest.approx(1.5)
    assert taken.after.mm == pytest.approx(0.93)
    assert 0.03 < taken.before.doubt_mm < 0.1
    assert "pair 3" in taken.words
    assert "pair 2" in taken.words


def test_one_cap_stands_for_both_and_that_is_said() -> None:
    taken = rotor_gaps([rotor(33.4, 33.95), cap((34.9,), ())])
    assert taken is not None
    assert taken.after is not None
    assert taken.after.mm == pytest.approx(0.95)
    assert "removed cap was read and stands for both" in taken.words


def test_a_new_cap_alone_stands_for_both_and_a_rotor_read_on_one_side_gives_one_gap() -> None:
    taken = rotor_gaps([rotor(33.4, 33.95), cap((), (34.9,))])
    assert taken is not None
    assert taken.before is not None
    assert taken.before.mm == pytest.approx(1.5)
    assert "only the replacement was read and stands for both" in taken.words
    new_only = pair("distributor-rotor", "tip-radius", (), (33.95,))
    half = rotor_gaps([new_only, cap((34.9,), (34.9,))])
    assert half is not None
    assert (half.before, half.after is None) == (None, False)


def test_a_given_gap_stays_the_same_where_nothing_that_changes_it_was_read() -> None:
    taken = rotor_gaps([], 1.5)
    assert taken is not None
    assert (taken.before, taken.after) == (Gap(1.5), Gap(1.5))
    assert "after: the same, for nothing that changes it was read" in taken.words


def test_a_path_with_one_gap_speaks_of_that_one_alone() -> None:
    whole = spark_path(Gap(1.5), Gap(1.1), 10.0)
    alone = SparkPath(whole.rotor, None)
    assert alone.sentences() == whole.sentences()[:1]
    assert SparkPath(None, whole.plug).sentences() == whole.sentences()[1:2]


def test_without_a_cap_there_is_no_rotor_gap_unless_it_is_given() -> None:
    assert rotor_gaps([rotor(33.4, 33.95)]) is None
    taken = rotor_gaps([rotor(33.4, 33.95)], 1.5)
    assert taken is not None
    assert taken.before == Gap(1.5)
    assert taken.after is not None
    assert taken.after.mm == pytest.approx(0.95)


def test_inches_and_millimetres_give_the_same_gap() -> None:
    read = pair("spark-plug", "gap", (1.27,), (0.762,))
    dimension = read.compared.dimension("gap")
    assert dimension is not None
    assert dimension.removed is not None
    inches = replace(
        dimension,
        unit="in",
        removed=replace(dimension.removed, value=0.05),
        replacement=None,
    )
    told = replace(read, compared=replace(read.compared, dimensions=(inches,)))
    here, there = plug_gaps([read]), plug_gaps([told])
    assert here is not None
    assert there is not None
    assert here.before is not None
    assert there.before is not None
    assert there.before.mm == pytest.approx(here.before.mm)
    assert there.after is None


def test_of_several_plugs_the_widest_old_gap_counts() -> None:
    read = [pair("spark-plug", "gap", (gap,), (0.9,)) for gap in (1.0, 1.4, 1.2)]
    taken = plug_gaps(read)
    assert taken is not None
    assert taken.before is not None
    assert taken.before.mm == pytest.approx(1.4)


@pytest.fixture
def story(shop: ShopRecord) -> RotorStory:
    """The rotor of J-104, measured, without its cap."""
    return a_rotor(shop)


def add(story: RotorStory, kind: str, dimension: str, old: str, new: str) -> None:
    """Lay another pair of the job side by side and read one dimension."""
    made = actions.lay_side_by_side(story.record, story.job, kind).made
    known = kinds()[kind].dimension(dimension)
    assert made is not None
    assert known is not None
    actions.write_readings(story.record, made, known, "removed", old)
    actions.write_readings(story.record, made, known, "replacement", new)


def test_a_sheet_without_the_cap_has_no_spark_path(story: RotorStory) -> None:
    assert list(spark_blocks(read_sheet(story.record, story.job, kinds()))) == []
    assert "asks of the coil" not in words_in(story.pdf())


def test_the_sheet_shows_one_picture_with_both_bounds(story: RotorStory) -> None:
    add(story, "distributor-cap", "terminal-radius", "34.90", "34.88")
    add(story, "spark-plug", "gap", "1.30", "1.05")
    shown = list(spark_blocks(read_sheet(story.record, story.job, kinds())))
    (picture,) = [block for block in shown if isinstance(block, SparkPicture)]
    assert [bar.side for bar in picture.bars] == ["removed", "replacement"]
    for bar in picture.bars:
        assert 0 < bar.least < bar.low < bar.high < bar.most
    old, new = picture.bars
    assert old.low > new.low
    assert old.high > new.high
    assert [block.items for block in shown if isinstance(block, Cautions)] == [HIGH_VOLTAGE]
    printed = words_in(story.pdf())
    for said in (
        f"The old parts asked the coil for about {old.low:.1f} to {old.high:.1f} kV",
        f"{new.low:.1f} to {new.high:.1f} kV",
        "kilovolts (kV)",
        ESTIMATE,
        "a usual figure, for the engine's own was not written",
        "can injure or kill",
    ):
        assert said in printed, said


def test_rotor_and_cap_alone_say_that_the_plug_is_not_in_it(story: RotorStory) -> None:
    add(story, "distributor-cap", "terminal-radius", "34.90", "34.88")
    shown = list(spark_blocks(read_sheet(story.record, story.job, kinds())))
    (picture,) = [block for block in shown if isinstance(block, SparkPicture)]
    assert {bar.name for bar in picture.bars} == {"rotor gap alone"}
    assert all(bar.low == bar.high for bar in picture.bars)
    words = " ".join(block.words for block in shown if isinstance(block, Words))
    assert "The plug gap was not measured" in words
    assert "Compression" not in words


def test_a_plug_that_was_not_fitted_is_not_in_the_picture(story: RotorStory) -> None:
    add(story, "spark-plug", "gap", "1.30", "1.05")
    facts = read_sheet(story.record, story.job, kinds())
    assert list(spark_blocks(facts))
    actions.say_fitted(story.record, facts.pairs[-1].pair.id, fitted=False)
    assert list(spark_blocks(read_sheet(story.record, story.job, kinds()))) == []


def test_the_engines_own_compression_is_taken_where_it_is_known(story: RotorStory) -> None:
    add(story, "spark-plug", "gap", "1.30", "1.05")
    facts = read_sheet(story.record, story.job, kinds())
    high, low = (
        next(block for block in spark_blocks(facts, ratio) if isinstance(block, SparkPicture))
        for ratio in (11.0, 8.0)
    )
    assert high.bars[0].low > low.bars[0].low


def test_a_gap_outside_of_the_formula_has_no_number_in_the_picture(story: RotorStory) -> None:
    add(story, "spark-plug", "gap", "0.003", "0.003")
    shown = list(spark_blocks(read_sheet(story.record, story.job, kinds()), 9.5))
    assert not [block for block in shown if isinstance(block, SparkPicture)]
    words = " ".join(block.words for block in shown if isinstance(block, Words))
    assert "The rotor gap was not measured" in words
    assert "Compression 9.5 to 1; the squeezed air" in words
    assert "larger of the two" not in words
    add(story, "distributor-cap", "terminal-radius", "34.90", "34.88")
    shown = list(spark_blocks(read_sheet(story.record, story.job, kinds())))
    (picture,) = [block for block in shown if isinstance(block, SparkPicture)]
    assert {bar.name for bar in picture.bars} == {"rotor gap alone"}
    words = " ".join(block.words for block in shown if isinstance(block, Words))
    assert "Where a gap has no number, what it asks for is not in this picture." in words
