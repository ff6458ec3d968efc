"""Pair files: what is read from them, and how a bad one is refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.parts_compared.instruments.instrument import usual_instrument
from desktop_app.parts_compared.pair_file import read_pair
from desktop_app.parts_compared.pair_table import PairTrouble
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds

KINDS = load_kinds([Path(__file__).parents[2] / "resources" / "part_kinds"]).kinds
PAIR = """\
kind = "distributor-rotor"
[instruments.calliper]
resolution_mm = 0.01
max_error_mm = 0.03
[[readings]]
side = "removed"
dimension = "tip-protrusion"
instrument = "calliper"
values = [4.10, 4.12, 4.11]
[[readings]]
side = "replacement"
dimension = "tip-protrusion"
values = ["4.66 mm", 4.65]
[[conditions]]
side = "removed"
terms = ["burned tip"]
[[limits]]
dimension = "resistance"
at_most = 6
"""


def test_a_pair_file_is_read_and_compared() -> None:
    pair = read_pair(PAIR, "pair.toml", KINDS)
    assert pair.readings[1].values == (4.66, 4.65)
    assert pair.instruments["calliper"].max_error == 0.03
    assert pair.limits[0].at_most == 6.0
    result = compare(
        pair.kind, pair.readings, pair.conditions, pair.instruments, pair.explained, pair.limits
    )
    protrusion = result.dimension("tip-protrusion")
    assert protrusion is not None
    assert protrusion.verdict == "restored"
    assert result.verdict == "not enough measured"


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('"distributor-rotor"', '"distributor-roter"', "did you mean distributor-rotor"),
        ('kind = "distributor-rotor"\n', "", "field 'kind': it is missing"),
        ('side = "removed"\ndim', 'side = "left"\ndim', "readings 1, field 'side': 'left'"),
        ("tip-protrusion", "tip-protusion", "did you mean tip-protrusion"),
        ("[4.10, 4.12, 4.11]", "[4.10, nan]", "readings 1, field 'values': nan"),
        ("[4.10, 4.12, 4.11]", "[inf]", "inf is not possible"),
        ("[4.10, 4.12, 4.11]", "[-4.1]", "-4.1 is not possible for 'tip-protrusion'"),
        ("[4.10, 4.12, 4.11]", "[true]", "True is not a number"),
        ("[4.10, 4.12, 4.11]", "[]", "field 'values': there are none"),
        ("[4.10, 4.12, 4.11]", "4.1", "field 'values': there are none"),
        ("[4.10, 4.12, 4.11]", "[[4.1]]", "[4.1] is not a number"),
        ("[4.10, 4.12, 4.11]", '["long"]', "'long' is not possible"),
        ('instrument = "calliper"', 'instrument = "stick"', "'stick' is not known"),
        ("max_error_mm = 0.03", "max_error_mm = -1", "instruments.calliper, field 'max_error_mm'"),
        (
            "[instruments.calliper]",
            "[instruments.stick]\nresolution_mm=1\n[extra]",
            "it is missing",
        ),
        ('["burned tip"]', '"burned tip"', "conditions 1, field 'terms'"),
        ('dimension = "resistance"', 'dimension = "bore"', "'bore' takes no limits"),
        ("at_most = 6", "", "no limit is given"),
        ("[[conditions]]", "[conditions]", "field 'conditions'"),
        ("values", "values =", "can't be read as TOML"),
        ("at_most = 6", "at_least = 7\nat_most = 6", "field 'at_least': it is above at_most"),
        ("at_most = 6", 'at_most = "six"', "'six' is not a number"),
        ("at_most = 6", "at_most = true", "True is not a number"),
        ('instrument = "calliper"', "instrument = 7", "7 is not a text"),
        ('instrument = "calliper"', 'instrument = " "', "' ' is not a text"),
        ("[instruments.calliper]", "[[instruments]]", "these are not tables"),
        ("resolution_mm = 0.01", "resolution_mm = 0", "no instrument is read without end"),
        ("[[conditions]]", "[surprise]\n[[conditions]]", "a pair has no such part"),
    ],
)
def test_a_bad_pair_file_says_where_and_what_is_accepted(old: str, new: str, said: str) -> None:
    with pytest.raises(PairTrouble) as trouble:
        read_pair(PAIR.replace(old, new, 1), "pair.toml", KINDS)
    sentence = trouble.value.sentence()
    assert sentence.startswith("pair.toml")
    assert said in sentence
    assert "Accepted: " in sentence
    assert "\n" not in sentence


def test_a_count_is_whole_and_a_word_is_a_word() -> None:
    cap = (
        'kind = "distributor-cap"\n[[readings]]\nside = "removed"\ndimension = "{}"\nvalues = [{}]'
    )
    for name, value in (("towers", "4.5"), ("tower-form", "4")):
        with pytest.raises(PairTrouble):
            read_pair(cap.format(name, value), "pair.toml", KINDS)
    assert read_pair(cap.format("tower-form", '"male"'), "p", KINDS).readings[0].values == ("male",)
    with pytest.raises(PairTrouble) as trouble:
        read_pair(cap.format("tower-form", ""), "pair.toml", KINDS)
    assert '"male"' in trouble.value.sentence()


def test_a_difference_may_be_explained_in_the_file_by_whom_and_why() -> None:
    explained = '[[explained]]\ndimension = "bore"\nby = "the supplier"\nwhy = "new number"\n'
    (read,) = read_pair(PAIR + explained, "pair.toml", KINDS).explained
    assert (read.dimension, read.by, read.why) == ("bore", "the supplier", "new number")


def test_an_instrument_of_the_file_has_the_usual_figures_where_it_says_none() -> None:
    pair = read_pair(PAIR.replace("resolution_mm = 0.01\n", ""), "pair.toml", KINDS)
    usual = usual_instrument("calliper", "mm")
    assert usual is not None
    assert pair.instruments["calliper"].resolution == usual.resolution
    assert pair.instruments["calliper"].max_error == 0.03


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("[instruments.calliper]\nmax_eror_mm = 5", "did you mean max_error_mm"),
        ("[instruments.calliper]\nresolution_inch = 5", "no dimension is in inch"),
        (
            '[[readings]]\nside = "removed"\ndimension = "bore"\ninstrumnt = "x"\nvalues = [1]',
            "did you",
        ),
        ('[[conditions]]\nside = "removed"\nterm = ["x"]', "did you mean terms"),
        ("a" + ".a" * 90_000 + " = 1", "too many dots"),
    ],
)
def test_a_field_that_no_table_has_is_refused(line: str, says: str) -> None:
    with pytest.raises(PairTrouble, match=says):
        read_pair(f'kind = "distributor-rotor"\n{line}\n', "pair.toml", KINDS)
