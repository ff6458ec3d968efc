"""An import gives the same, however many rows are written at a time, and is taken back whole."""

from __future__ import annotations

from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.commands.shop_place import kinds_of
from desktop_app.records_exchanged import stored_import
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.stored_index import JobIndex
from tests.records_exchanged.importing import (
    a_shop,
    backed_up_before,
    bring_in,
    counts,
    everything,
    lines,
)
from tests.records_exchanged.test_writing import BACK, COIL, FIRST, PLUG

DAYS = ["2024-01-05", "2024-01-06", "2024-02-01"]
SAID = st.fixed_dictionaries(
    {"job_number": st.sampled_from(["A1", "A2", "A3", "A4"]), "opened_on": st.sampled_from(DAYS)},
    optional={
        "closed_on": st.sampled_from(["2024-02-01", "2024-03-05"]),
        "vin": st.sampled_from(["1M8GDM9AXKP042788", "1M8GDM9AXKP042789"]),
        "plate": st.sampled_from(["AB 12", "ab12", "CD 34"]),
        "vehicle": st.sampled_from(["small car", "van"]),
        "odometer": st.sampled_from(["50000", "50100"]),
        "technician": st.sampled_from(["Sam", "Ed"]),
        "concern": st.sampled_from(["misfires when cold", "stalls", "Überhitzt bergauf, it hums"]),
        "cause": st.sampled_from(["coil cracked"]),
        "codes": st.sampled_from(["P0300", "P0301 P0300"]),
        "part_kind": st.sampled_from(["ignition coil", "something of ours"]),
        "hours": st.sampled_from(["1.5", "2", "0.1"]),
        "return_of": st.sampled_from(["A1", "A2"]),
    },
)


def outcome_by(
    monkeypatch: pytest.MonkeyPatch, shop: ShopRecord, at_a_time: int, content: str
) -> tuple[Any, Any]:
    with monkeypatch.context() as patch:
        patch.setattr(stored_import, "AT_A_TIME", at_a_time)
        told = bring_in(shop, content)
    return told.as_json(), everything(shop)


@settings(max_examples=12, deadline=None)
@given(said=st.lists(SAID, min_size=1, max_size=7))
def test_it_makes_no_difference_how_many_are_written_at_a_time(said: list[dict[str, Any]]) -> None:
    content = lines(*said)
    with TemporaryDirectory() as folder, pytest.MonkeyPatch.context() as patch:
        found = []
        for at_a_time in (1, 1000):
            for shop in a_shop(Path(folder) / str(at_a_time)):
                bring_in(shop, lines({**FIRST, "job_number": "A4"}))
                before = everything(shop)
                found.append(outcome_by(patch, shop, at_a_time, content))
                if shop.can_undo() == "Import jobs.csv" and found[-1][1] != before:
                    shop.undo()
                    assert everything(shop) == before
                    shop.redo()
                    assert everything(shop) == found[-1][1]
        assert found[0] == found[1]


def test_what_a_later_row_adds_to_a_job_is_found_by_its_words(tmp_path: Path) -> None:
    said = [{**FIRST, "vehicle": "", **COIL}, BACK, {"job_number": "A1", "codes": "P0420"}]
    said += [{**FIRST, "codes": "", "vehicle": "green van", **PLUG}]
    for shop in a_shop(tmp_path):
        with pytest.MonkeyPatch.context() as patch:
            told, all_rows = outcome_by(patch, shop, 1, lines(*said))
        assert (told["added"], told["updated"], told["rejected"]) == (2, 2, [])
        words = [" ".join(map(str, row)) for row in all_rows["job_text"]]
        assert "p0420" in words[0]
        assert "s 1" in words[0]
        assert all("green van" in of_one for of_one in words)


def test_the_words_told_of_new_jobs_are_those_that_the_record_gives(tmp_path: Path) -> None:
    first = {**FIRST, **COIL, "supplier": "Eastside", "codes": "P0301 P0300", "vehicle": "van"}
    first |= {"concern": "misfires when warm, and when cold", "vin": "1M8GDM9AXKP042788"}
    for shop in a_shop(tmp_path):
        bring_in(shop, lines(first, {**first, **PLUG}, {**BACK, "vin": first["vin"]}))
        told = everything(shop)["job_text"]
        with shop.deed("Made anew") as deed:
            assert JobIndex(kinds_of()).rebuild(deed.connection) == 2
        assert everything(shop)["job_text"] == told


def test_what_two_rows_far_apart_say_of_an_old_job_is_kept_once(tmp_path: Path) -> None:
    again = {**BACK, "codes": "P0420"}
    for shop in a_shop(tmp_path):
        bring_in(shop, lines(FIRST, {**BACK, "return_of": "", "judgement": ""}))
        with pytest.MonkeyPatch.context() as patch:
            told, found = outcome_by(patch, shop, 1, lines({**again, **COIL}, {**again, **PLUG}))
        assert told["rejected"] == []
        assert len(found["return_link"]) == 1
        assert [row[2] for row in found["trouble_code"]].count("P0420") == 1


def test_progress_tells_of_rows_whose_words_are_in_the_index(tmp_path: Path) -> None:
    heard: list[int] = []
    for shop in a_shop(tmp_path):
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr(stored_import, "AT_A_TIME", 1)
            told = bring_in(shop, lines(FIRST, BACK), told=heard.append)
    assert heard == [1, 2]
    assert counts(told) == (2, 0, 0, 0)


def test_who_stops_it_when_all_was_written_is_told_what_was_brought_in(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def stopped_late(*said: Any) -> None:
        do(*said)
        raise KeyboardInterrupt

    for shop in a_shop(tmp_path):
        bring_in(shop, lines({**FIRST, "job_number": "A0"}))
        do = shop.do
        monkeypatch.setattr(shop, "do", stopped_late)
        assert counts(bring_in(shop, lines(FIRST))) == (1, 0, 0, 0)
        assert len(everything(shop)["job"]) == 2
        assert len(backed_up_before(shop)) == 1
