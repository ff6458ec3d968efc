"""Where a sealed copy is written: what lies there is left alone, and nothing half done stays."""

from __future__ import annotations

import errno
from pathlib import Path

import pytest

from desktop_app.job_history.sealing_actions import make_sealed_copy
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble
from tests.job_history.told import SYMPTOMS, sealed, verified
from tests.parts_compared.sheet_story import RotorStory, a_rotor, kinds

WHOLE = "Whole: every file, and the chain of all entries."


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    return a_rotor(shop)


@pytest.mark.parametrize("there", ["a file", "a folder with something in it", "a zip"])
def test_what_lies_there_is_left_alone(rotor: RotorStory, tmp_path: Path, there: str) -> None:
    to = tmp_path / ("copy.zip" if there == "a zip" else "copy")
    if there == "a folder with something in it":
        to.mkdir()
        (to / "mine.txt").write_text("mine")
    else:
        to.write_text("mine")
    with pytest.raises(ShopTrouble, match="is there already"):
        sealed(rotor.record, rotor.job, to)
    kept = to / "mine.txt" if to.is_dir() else to
    assert kept.read_text() == "mine"
    assert sorted(one.name for one in tmp_path.iterdir()) == sorted([to.name, "shop"])


def test_an_empty_folder_is_filled_and_a_missing_one_above_is_told(
    rotor: RotorStory, tmp_path: Path
) -> None:
    (tmp_path / "empty").mkdir()
    sealed(rotor.record, rotor.job, tmp_path / "empty")
    assert verified(tmp_path / "empty") == (0, WHOLE)
    with pytest.raises(ShopTrouble, match="There is no folder"):
        sealed(rotor.record, rotor.job, tmp_path / "no" / "copy")


@pytest.mark.parametrize("steps", [1, 2])
def test_stopped_half_way_nothing_is_left(rotor: RotorStory, tmp_path: Path, steps: int) -> None:
    work = make_sealed_copy(rotor.record, rotor.job, kinds(), SYMPTOMS, tmp_path / "copy")
    for _ in range(steps):
        next(work)
    work.close()
    assert [one.name for one in tmp_path.iterdir()] == ["shop"]


@pytest.mark.embedded
def test_making_it_changes_nothing_in_the_shop(rotor: RotorStory, tmp_path: Path) -> None:
    before = (rotor.record.folder / FILE_NAME).read_bytes()
    sealed(rotor.record, rotor.job, tmp_path / "copy")
    assert (rotor.record.folder / FILE_NAME).read_bytes() == before


def test_a_disk_that_refuses_is_told_and_nothing_is_left(
    rotor: RotorStory, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_place: Path, _content: bytes) -> int:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "write_bytes", full)
    with pytest.raises(ShopTrouble, match="No space left on device") as refused:
        sealed(rotor.record, rotor.job, tmp_path / "copy")
    assert refused.value.kept == "Nothing of it was left there."
    assert [one.name for one in tmp_path.iterdir()] == ["shop"]
