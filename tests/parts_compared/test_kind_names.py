"""A part kind is found by any name that people have for it."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.part_kinds.kind_names import (
    kind_called,
    kind_names,
    kind_words,
    kinds_meant,
    place_words,
)
from desktop_app.parts_compared.part_numbers import numbers_differ
from tests.another_language import another_language
from tests.parts_compared.sheet_story import kinds

CAP = kinds()["distributor-cap"]._replace(name="distributor cap", also=("cap", "dizzy lid"))
ROTOR = kinds()["distributor-rotor"]._replace(name="distributor rotor", also=("arm", "cap"))
SHELF = {CAP.id: CAP, ROTOR.id: ROTOR}


def test_every_other_name_says_which_kind_it_means() -> None:
    assert kind_names(SHELF) == {
        "distributor cap": CAP.id,
        "distributor rotor": ROTOR.id,
        "cap (distributor cap)": CAP.id,
        "dizzy lid (distributor cap)": CAP.id,
        "arm (distributor rotor)": ROTOR.id,
        "cap (distributor rotor)": ROTOR.id,
    }
    named_so = ROTOR._replace(also=("distributor cap",))
    assert kind_names({CAP.id: CAP, ROTOR.id: named_so})["distributor cap"] == CAP.id


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        (" Distributor   CAP ", CAP.id),
        ("distributor-rotor", ROTOR.id),
        ("arm (distributor rotor)", ROTOR.id),
        ("lid", CAP.id),
        ("distributor", None),
        ("wiper", None),
        ("  ", None),
    ],
)
def test_a_text_names_one_kind_or_none(typed: str, found: str | None) -> None:
    called = kind_called(typed, SHELF)
    assert (called.id if called else None) == found


def test_what_is_typed_half_offers_all_that_may_be_meant_by_name() -> None:
    assert [one.id for one in kinds_meant("CAP", SHELF)] == [CAP.id, ROTOR.id]
    assert [one.id for one in kinds_meant("", SHELF)] == [CAP.id, ROTOR.id]
    assert kinds_meant("wiper", SHELF) == ()


def test_a_kinds_own_name_goes_before_another_and_a_beginning_before_the_rest() -> None:
    disc = CAP._replace(id="disc", name="brake disc", also=("brake rotor",))
    plate = CAP._replace(id="plate", name="armature plate", also=("rotor plate",))
    shaft = CAP._replace(id="shaft", name="rotor shaft", also=())
    shelf = {one.id: one for one in (plate, disc, ROTOR, shaft)}
    assert [one.id for one in kinds_meant("Rotor", shelf)] == ["shaft", ROTOR.id, "plate", "disc"]
    ours = [one.id for one in kinds_meant("rotor", kinds())]
    assert ours[:2] == ["distributor-rotor", "brake-disc"]


def test_a_kind_that_is_not_at_hand_is_said_by_its_id_and_only_ours_is_translated() -> None:
    with another_language():
        assert kind_words(CAP.id, SHELF) == "distributor cap"
        assert kind_words("spark-plug") == "«spark plug»"
        assert kind_words("boat-rotor") == "boat rotor"
        assert kind_words("Rotor of a boat - old") == "Rotor of a boat - old"
        assert place_words("left", "boat-rotor") == "left"


def test_numbers_that_nobody_read_or_that_are_alike_disagree_with_none() -> None:
    for box, part in (("", "RT-2207"), ("RT-2207", ""), ("rt 2207", "RT-22.07")):
        assert numbers_differ(box, part) is None
    assert numbers_differ("RT-2207", "RT-2208") is not None
