"""What is kept and compared of a pair is the same in every language; only sentences differ."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.parts_compared.instruments.row_tools import row_tools
from desktop_app.parts_compared.mark_doubt import MarkRead, doubt_of_mark
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.kind_names import kind_words
from desktop_app.parts_compared.part_kinds.own_kind import new_dimension
from desktop_app.parts_compared.reading import ConditionSeen
from desktop_app.parts_compared.sheet_pair import pair_name
from desktop_app.parts_compared.sheet_proof import proof_file_blocks
from desktop_app.parts_compared.sheet_refit import refit_file_blocks
from desktop_app.parts_compared.sheet_values import verdict_cell
from desktop_app.parts_compared.stored_refit import replaced_in
from desktop_app.parts_compared.stored_sets import sets_of_job
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs import actions
from desktop_app.shop_record.question import kept_words
from desktop_app.shop_record.record import ShopRecord
from tests.another_language import another_language
from tests.parts_compared.invented_kinds import both, dimension, kind, worn
from tests.parts_compared.sheet_story import a_rotor, kinds

PART = kind(dimension(), worn())
READINGS = [*both("width", 10.00, 10.02), *both("tip", 26.90, 26.10)]
SEEN = [ConditionSeen("replacement", ("burned tip",))]


def test_a_verdict_is_kept_as_it_is_and_said_in_the_language_spoken() -> None:
    before = compare(PART, READINGS, SEEN)
    with another_language():
        after = compare(PART, READINGS, SEEN)
        assert verdict_cell(after.dimensions[1]) == "⇓ «worse than the old one»"
    assert after.verdict == before.verdict == "stop and look"
    assert [one.verdict for one in after.dimensions] == ["same", "worse than the old one"]
    assert "«The new part shows «burned tip». A new part must not have that.»" in after.reasons
    assert not set(after.reasons) & set(before.reasons)


def test_two_readings_share_their_card_whatever_was_spoken_when_they_were_taken() -> None:
    mark = MarkRead(1, 24.8, "mm", 0.27, {"pointing": 0.05}, 10.0, 1.0, card_id=1)
    before = doubt_of_mark(mark)
    with another_language():
        assert doubt_of_mark(mark) == before


def test_an_instrument_is_chosen_by_its_kept_name_and_shown_in_the_language_spoken() -> None:
    with another_language():
        tools = row_tools(dimension(), {}, (), marks=False, picked=None)
    assert tools.shown == "calliper"
    assert ("calliper", "«calliper»") in tools.choices


def test_what_the_shop_decided_is_kept_with_the_same_source_in_every_language() -> None:
    with another_language():
        made = new_dimension(PART, "depth", "same", "mm", "depth rod", "0.2")
    assert made.basis == "the shop's own figure"


def test_a_question_about_readings_is_answered_once_for_every_language() -> None:
    mixed_up = [*both("width", 10.0, 254.0), *both("tip", 27.01, 26.0)]
    spoken = kind(dimension(label="anchura", written="width"), worn(label="punta", written="tip"))
    asked = compare(PART, mixed_up).questions
    with another_language():
        questions = compare(spoken, mixed_up).questions
    assert [kept_words(one) for one in questions] == [kept_words(one) for one in asked] == [*asked]
    assert [one[:9] for one in asked] == ["Width: 25", "By tip th", "Width: ev"]
    assert questions[0].startswith("Anchura: «")
    assert questions[1].startswith("«By punta ")


def test_what_the_fitted_parts_ask_for_is_ticked_in_one_language_and_read_in_another(
    shop: ShopRecord,
) -> None:
    story, rotor = a_rotor(shop, left_at=None), kinds()["distributor-rotor"]
    asked = tuple(one.say for one in rotor.proof)
    with another_language():
        for one in (rotor.proof[0], *rotor.proof[2:]):
            actions.tick_check(shop, story.job, "proof", one.say, "done")
        actions.tick_check(shop, story.job, "refit", rotor.refit[0].say, "done")
        sheet = read_sheet(shop, story.job, kinds())
        spoken = str([*proof_file_blocks(sheet.job, sheet.proof, asked)])
        points = str([*refit_file_blocks(sheet.job, (rotor,))])
    written = str([*proof_file_blocks(sheet.job, sheet.proof, asked)])
    assert f"«Not ticked: «{asked[1].rstrip('.')}" in spoken
    assert f"Not ticked: {asked[1].rstrip('.')}" in written
    assert not any(f"Not ticked: {one}" in written for one in (asked[0], *asked[2:]))
    assert f"«{rotor.refit[1].say}»" in points
    assert f"Words(words='«{rotor.refit[0].say}".rstrip(".") in points
    assert "name='«Ticked as done»'" in points


@pytest.mark.parametrize(
    ("kept", "said"),
    [
        ("spark-plug", "«spark plug»"),
        ("our-own-rotor", "our own rotor"),
        ("light", "light"),
        ("Anti-roll bar bush", "Anti-roll bar bush"),
    ],
)
def test_a_kind_that_somebody_typed_is_called_as_it_was_typed(kept: str, said: str) -> None:
    with another_language():
        assert kind_words(kept) == said


def test_a_side_is_said_on_the_sheet_and_offered_in_the_language_spoken(shop: ShopRecord) -> None:
    story = a_rotor(shop, left_at=None)
    for place in ("left", "left, the newer one"):
        lay_side_by_side(shop, story.job, "brake-pads", place)
    with another_language(), shop.reading() as connection:
        said = replaced_in(connection, story.job, kinds())
        pairs = read_sheet(shop, story.job, kinds()).pairs
        names = [pair_name(one.pair, one.kind) for one in pairs]
    assert "disc brake pads («left»)" in said
    assert "disc brake pads (left, the newer one)" in said
    assert names[1:] == ["Disc brake pads, «left»", "Disc brake pads, left, the newer one"]


def test_parts_that_meet_do_so_by_their_sides_and_say_them_in_the_language_spoken(
    shop: ShopRecord,
) -> None:
    job = a_rotor(shop, left_at=None).job
    for kind_id in ("brake-disc", "brake-pads"):
        lay_side_by_side(shop, job, kind_id, "left")
    with shop.reading() as connection:
        (written,) = sets_of_job(connection, job, kinds())
        with another_language():
            (spoken,) = sets_of_job(connection, job, kinds())
    assert (written.position, spoken.position) == ("left", "«left»")
    assert written.kept_as == spoken.kept_as
