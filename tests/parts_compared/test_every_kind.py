"""Every kind of the shelf: whole, consistent in itself, and able to judge a pair."""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest

from desktop_app.parts_compared.instruments.instrument import usual_instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.reading import SIDES, Reading
from desktop_app.repair_jobs.proof import ProofLevel

BUILT_IN = Path(__file__).parents[2] / "resources" / "part_kinds"
SHELF = load_kinds([BUILT_IN])
KINDS = pytest.mark.parametrize("kind", SHELF.kinds.values(), ids=lambda kind: kind.id)

#: What a shop compares at its counter (our own choice; common practice, no source).
CATALOGUE = frozenset({
    "air-filter", "alternator", "battery", "brake-calliper", "brake-disc", "brake-hose",
    "brake-pads", "brake-shoes-drum", "bulb", "connector", "control-arm-ball-joint",
    "coolant-hose", "crank-cam-sensor", "cv-axle", "distributor-cap", "distributor-rotor",
    "egr-pcv-valve", "engine-mount", "fuel-filter", "fuel-pump", "fuse", "gasket-seal-oring",
    "ignition-coil", "injector", "maf-sensor", "oil-filter", "oxygen-sensor", "plug-wire",
    "relay", "serpentine-belt", "shock-strut", "spark-plug", "stabilizer-link", "starter",
    "temp-sensor", "tensioner-idler", "thermostat", "tie-rod-end", "timing-belt-kit",
    "water-pump", "wheel-bearing-hub", "wheel-speed-sensor", "wheel-stud-nut", "wiper-blade",
})  # fmt: skip
LEVELS = {level.word for level in ProofLevel if level is not ProofLevel.UNPROVEN}
#: Where a mistake injures or kills: the refit list must say so.
DANGEROUS = {
    "brakes", "charging", "cooling", "fuel", "ignition", "running gear", "starting", "steering",
    "suspension", "wheel-speed", "wheels",
}  # fmt: skip
#: Conditions by which a part becomes larger although wear makes it smaller.
SWELLING = {"separated"}


def far_off(one: Dimension) -> float | str:
    """Return a reading that can't be the same part, whatever the dimension is."""
    if one.role == "word":
        return "quite another"
    if one.role == "orientation":
        return 120.0
    return 2000.0 + 10 * ((one.allowed or (0.0, 0.0))[1] or 0.0)


def alike(one: Dimension) -> float | str:
    """Return what is read on both sides of a pair that doesn't differ."""
    return one.choices[0] if one.choices else "alike" if one.role == "word" else 40.0


def equal_readings(kind: PartKind) -> list[Reading]:
    """Return one equal reading a side of every dimension."""
    return [Reading(side, one.name, (alike(one),)) for one in kind.dimensions for side in SIDES]


def test_the_catalogue_is_on_the_shelf() -> None:
    assert SHELF.troubles == ()
    assert sorted(SHELF.kinds) == sorted(CATALOGUE)
    assert len(CATALOGUE) == 44


def test_each_file_is_named_by_the_kind_in_it() -> None:
    assert {path.stem for path in BUILT_IN.glob("*.toml")} == set(SHELF.kinds)


def test_no_two_kinds_go_by_the_same_name() -> None:
    names = Counter(
        name.casefold() for kind in SHELF.kinds.values() for name in (kind.name, *kind.also)
    )
    assert [name for name, times in names.items() if times > 1] == []


def is_worn(kind: PartKind, name: str) -> bool:
    """Whether wear changes that dimension of the kind."""
    one = kind.dimension(name)
    return one is not None and one.role == "restored"


@KINDS
def test_it_can_be_looked_at_measured_put_back_and_proved(kind: PartKind) -> None:
    assert any(one.essential for one in kind.dimensions)
    assert len(kind.conditions) >= 3
    assert len(kind.wrongs) >= 2
    assert len(kind.refit) >= 2
    assert kind.proof
    assert {one.level.replace("-", " ") for one in kind.proof} <= LEVELS
    assert kind.views
    assert kind.cautions
    assert all("maker" in one and "local rules" in one for one in kind.cautions)


@KINDS
def test_its_tables_speak_of_dimensions_it_has(kind: PartKind) -> None:
    for condition in kind.conditions:
        for name in condition.moves:
            moved = kind.dimension(name)
            assert moved is not None, condition.term
            assert moved.role not in ("word", "orientation"), condition.term
    for wrong in kind.wrongs:
        for name in wrong.shows_on:
            assert kind.dimension(name), wrong.say


@KINDS
def test_wear_moves_a_dimension_away_from_what_a_new_part_restores(kind: PartKind) -> None:
    for condition in kind.conditions:
        for name, way in condition.moves.items():
            moved = kind.dimension(name)
            assert moved is not None
            if moved.role == "restored" and condition.term not in SWELLING:
                assert way != moved.direction, f"{condition.term}: {name}"


@KINDS
def test_every_dimension_says_how_it_is_read_and_where_its_figure_is_from(kind: PartKind) -> None:
    for one in kind.dimensions:
        assert one.how.endswith("."), one.name
        assert one.basis, one.name
        assert one.label, one.name
        assert usual_instrument(one.instrument, one.unit), f"{one.name}: {one.instrument}"
        if one.role == "restored":
            assert one.wear, one.name
        if one.typical is not None:
            assert one.unit != "word", one.name


@KINDS
def test_each_word_is_used_once(kind: PartKind) -> None:
    terms = [name.casefold() for one in kind.conditions for name in (one.term, *one.also)]
    assert sorted(terms) == sorted(set(terms))
    for one in kind.dimensions:
        assert len(set(one.choices)) == len(one.choices) != 1, one.name
    labels = [one.label for one in kind.dimensions]
    assert len(set(labels)) == len(labels)


@KINDS
def test_where_it_can_hurt_it_says_so(kind: PartKind) -> None:
    if kind.system in DANGEROUS:
        assert any(one.hurt for one in kind.refit)


@KINDS
def test_it_never_calls_a_car_safe(kind: PartKind) -> None:
    said = " ".join(
        [*(one.means for one in kind.conditions), *(one.say for one in kind.refit + kind.proof)]
    )
    assert "safe to drive" not in said.casefold()


@KINDS
def test_a_pair_that_reads_alike_has_only_unrestored_wear_against_it(kind: PartKind) -> None:
    pair = compare(kind, equal_readings(kind))
    judged = {one.name: one.verdict for one in pair.dimensions}
    for one in kind.dimensions:
        if one.role == "limit" and one.allowed is None:
            assert judged[one.name] == "not measured", one.name
        elif one.role == "restored":
            unsettled = {"not restored", "too close to tell", "restored"}
            assert judged[one.name] in unsettled, one.name
        elif one.role != "limit":
            assert judged[one.name] == "same", one.name
    assert all(one.sentence for one in pair.dimensions)
    assert (pair.verdict == "stop and look") == ("not restored" in judged.values())


@KINDS
def test_an_essential_dimension_clearly_off_makes_one_stop_and_look(kind: PartKind) -> None:
    alike_pair = [one for one in equal_readings(kind) if not is_worn(kind, one.dimension)]
    assert compare(kind, alike_pair).verdict != "stop and look"
    for one in kind.dimensions:
        if one.essential:
            others = [reading for reading in alike_pair if reading.dimension != one.name]
            old = Reading("removed", one.name, (alike(one),))
            new = Reading("replacement", one.name, (far_off(one),))
            pair = compare(kind, [*others, old, new])
            assert pair.verdict == "stop and look", one.name
            judged = next(each for each in pair.dimensions if each.name == one.name)
            assert judged.settled_against
            assert judged.sentence in pair.reasons


@KINDS
def test_written_out_and_read_again_it_is_the_same_kind(kind: PartKind) -> None:
    assert read_kind(kind_as_toml(kind), f"{kind.id}.toml") == kind
