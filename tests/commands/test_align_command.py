"""`align` keeps its contract: one document whatever came out, or one line and no file."""

from __future__ import annotations

import json
import os
from functools import cache
from pathlib import Path

import cv2
import numpy as np
import pytest
from PIL import Image

from desktop_app.part_photos.bench_card.card_file import card_json
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.photo_pixels import PhotoPixels
from tests.commands.test_command_line import Shell
from tests.part_photos.overlay_scenes import Pinhole, Prism, disc, photo, rotor

CARD = bench_card("a4")
SIZE, FOCAL = (1600, 1200), 1250.0
OLD_EYE = Pinhole((95.0, 160.0, 330.0), (105.0, 140.0), 1.57, FOCAL, SIZE)
NEW_EYE = Pinhole((115.0, 120.0, 310.0), (105.0, 140.0), 1.4, FOCAL, SIZE)
OLD = Prism(rotor(5.0), 2.0, 30.0, (105.0, 140.0))
NEW = Prism(rotor(7.0), 2.0, -60.0, (95.0, 150.0))


@pytest.fixture
def shell(capsys: pytest.CaptureFixture[str]) -> Shell:
    return Shell(capsys)


@cache
def taken(which: str) -> PhotoPixels:
    """The photos of the tests, each made once."""
    camera, part = {
        "old": (OLD_EYE, OLD),
        "new": (NEW_EYE, NEW),
        "disc": (NEW_EYE, Prism(disc(), 2.0)),
    }[which]
    return photo(camera, part, len(which), card=CARD)


@pytest.fixture
def photos(tmp_path: Path) -> tuple[str, str]:
    return saved(tmp_path, "old"), saved(tmp_path, "new")


def saved(folder: Path, which: str) -> str:
    file = folder / f"{which}.jpg"
    Image.fromarray(taken(which).rgb).save(file, quality=92)
    return str(file)


def test_two_photos_on_cards_are_laid_on_each_other(
    shell: Shell, tmp_path: Path, photos: tuple[str, str]
) -> None:
    out = tmp_path / "OVERLAY.png"
    said = shell("align", *photos, "--height-mm", "2", "--out", str(out), "--json")
    assert (said["aligned"], said["method"]) == (True, "card and outline"), said["why"]
    new = NEW_EYE.to_pixels(NEW.laid(), 2.0)
    landed = cv2.perspectiveTransform(new[:, None], np.array(said["transform"]))[:, 0]
    apart = landed - OLD_EYE.to_pixels(OLD.laid(NEW.outline), 2.0)
    assert np.sqrt((apart**2).sum(axis=1).mean()) < 1.0  # px of 0.26 mm
    assert 0.0 < said["residual_mm"] < 0.2
    assert said["residual_px"] > 0.0
    tip = said["differences"][0]
    assert tip["kind"] == "more"
    assert abs(tip["size_mm"] - 2.0) < tip["expanded_uncertainty_mm"]
    with Image.open(out) as picture:
        assert picture.format == "PNG"
    assert sorted(file.name for file in tmp_path.iterdir()) == ["OVERLAY.png", "new.jpg", "old.jpg"]


def test_a_layout_of_ones_own_serves_and_a_person_reads_sentences(
    shell: Shell, tmp_path: Path, photos: tuple[str, str]
) -> None:
    layout = tmp_path / "CARD.json"
    layout.write_text(card_json(CARD), encoding="utf-8")
    shell("align", *photos, "--layout", str(layout))
    assert shell.status == 0
    assert shell.out.startswith("Aligned.\n")
    # What makes it coarse comes before what was found.
    assert shell.out.splitlines()[1].startswith("How high the outline lies")
    assert shell.out.count("How high the outline lies") == 1
    assert "mm apart on the average" in shell.out


def test_without_a_height_sizes_are_less_certain_and_what_was_left_out_is_said(
    shell: Shell, photos: tuple[str, str]
) -> None:
    known = shell("align", *photos, "--height-mm", "2", "--json")
    unsaid = shell("align", *photos, "--json")
    assert known["height_mm"] == 2.0
    assert unsaid["height_mm"] is None
    assert unsaid["notes"][0].startswith("How high the outline lies")
    assert not any("How high" in note for note in known["notes"])
    for said in (known, unsaid):
        for one in said["not_compared"]:
            assert one["because_of"] in ("shade", "wall", "height")
            assert 0.0 < one["share"] <= 1.0
            assert one["sides"]
    least = [one["expanded_uncertainty_mm"] for one in known["differences"]]
    assert all(one["expanded_uncertainty_mm"] > max(least) for one in unsaid["differences"])
    assert any(one["because_of"] == "height" for one in unsaid["not_compared"])


def test_the_layout_that_is_read_is_never_written_over(
    shell: Shell, tmp_path: Path, photos: tuple[str, str]
) -> None:
    layout = tmp_path / "CARD.png"
    layout.write_text(card_json(CARD), encoding="utf-8")
    said = shell.refused("align", *photos, "--layout", str(layout), "--out", str(layout))
    assert "one of the files that are read" in said
    assert layout.read_text("utf-8") == card_json(CARD)


def test_a_mirrored_photo_is_not_aligned(shell: Shell, tmp_path: Path) -> None:
    mirrored = tmp_path / "mirrored.jpg"
    Image.fromarray(taken("new").rgb[:, ::-1]).save(mirrored, quality=92)
    said = shell("align", saved(tmp_path, "old"), str(mirrored), "--json")
    assert said["aligned"] is False
    assert "mirrored" in said["why"]


def test_what_cannot_be_aligned_is_an_answer_and_writes_nothing(
    shell: Shell, tmp_path: Path, photos: tuple[str, str]
) -> None:
    out = tmp_path / "OVERLAY.png"
    other = saved(tmp_path, "disc")
    said = shell("align", photos[0], other, "--out", str(out), "--json")
    assert shell.status == 0
    assert (said["aligned"], said["transform"], said["residual_px"]) == (False, None, None)
    assert "click two points" in said["why"]
    assert said["differences"] == []
    shell("align", photos[0], other, "--out", str(out))
    assert "was not written" in shell.out
    assert not out.exists()


def test_the_same_photo_twice_lies_on_itself(shell: Shell, tmp_path: Path) -> None:
    file = tmp_path / "plain.png"
    Image.fromarray(np.full((90, 120, 3), 99, np.uint8)).save(file)
    out = tmp_path / "o.png"
    said = shell("align", str(file), str(file), "--out", str(out), "--json")
    assert said["transform"] == np.eye(3).tolist()
    assert "same picture" in said["why"]
    assert any("old photo has no scale" in note for note in said["notes"])
    with Image.open(out) as picture:
        assert picture.size == (120, 90)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("gone.jpg", "new.png"), "gone.jpg"),
        (("text.jpg", "new.png"), "text.jpg"),
        (("old.png", "."), "is a folder. Accepted: a photo"),
        (("", "new.png"), "A file's name is empty"),
        (("old.png", " "), "A file's name is empty"),
        (("old.png", "new.png", "--out", "old.png"), "those are never changed"),
        (("old.png", "new.png", "--out", "link.png"), "those are never changed"),
        (("old.png", "new.png", "--out", "o.jpg"), "does not end in .png"),
        (("old.png", "new.png", "--out", "gone/o.png"), "There is no folder"),
        (("old.png", "new.png", "--out", "."), "is a folder"),
        (("old.png", "new.png", "--out", "pipe.png"), "a device or a pipe"),
        (("old.png", "new.png", "--layout", "gone.json"), "There is no file gone.json"),
        (("old.png", "new.png", "--layout", "."), ". is a folder. Accepted: a layout"),
        (("old.png", "new.png", "--layout", "pipe.png"), "is a device or a pipe"),
        (("old.png", "new.png", "--layout", "old.png"), "is a photo, no text file"),
        (("old.png", "new.png", "--out", "a\nb" + "x" * 260 + ".png"), "File name too long"),
        (("old.png", "new.png", "--layout", "text.jpg"), "not JSON"),
        (("old.png", "new.png", "--height-mm", "tall"), "--height-mm"),
        (("old.png", "new.png", "--height-mm", "nan"), "--height-mm"),
        (("old.png", "new.png", "--height-mm", "-3"), "--height-mm"),
        (("old.png",), "NEW"),
    ],
)
def test_bad_input_is_one_line_and_nothing_is_written(
    shell: Shell,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    words: tuple[str, ...],
    said: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    for name, shade in (("old.png", 90), ("new.png", 140)):
        Image.fromarray(np.full((90, 120, 3), shade, np.uint8)).save(name)
    Path("text.jpg").write_text("no picture", encoding="utf-8")
    os.link("new.png", "link.png")
    os.mkfifo("pipe.png")
    before = {file.name: file.stat().st_size for file in Path().iterdir()}
    assert said in shell.refused("align", *words, "--json")
    assert {file.name: file.stat().st_size for file in Path().iterdir()} == before


def test_a_folder_that_may_not_be_written_is_said(
    shell: Shell, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "plain.png"
    Image.fromarray(np.full((90, 120, 3), 99, np.uint8)).save(file)
    whole = Path.open

    def refuse(path: Path, mode: str = "r", *more: object, **named: object) -> object:
        if mode == "wb":
            raise PermissionError(13, "Permission denied", str(path))
        return whole(path, mode, *more, **named)  # type: ignore[call-overload]

    monkeypatch.setattr(Path, "open", refuse)
    out = str(tmp_path / "o.png")
    assert "Permission denied" in shell.refused("align", str(file), str(file), "--out", out)
    assert [one.name for one in tmp_path.iterdir()] == ["plain.png"]


def test_the_document_is_json_with_whole_precision(shell: Shell, photos: tuple[str, str]) -> None:
    shell("align", *photos, "--height-mm", "2,0", "--json")
    said = json.loads(shell.out)
    assert said["height_mm"] == 2.0
    assert len(said["transform"]) == 3
    assert all(len(row) == 3 for row in said["transform"])


@pytest.mark.parametrize("field", [[-2000, -2000, 2000, 2000], [9000, 9000, 9999, 9999]])
def test_a_field_beyond_what_the_camera_sees_is_an_answer(
    shell: Shell, tmp_path: Path, photos: tuple[str, str], field: list[float]
) -> None:
    facts = json.loads(card_json(CARD))
    (tmp_path / "CARD.json").write_text(json.dumps({**facts, "free_field_mm": field}), "utf-8")
    said = shell("align", *photos, "--layout", str(tmp_path / "CARD.json"), "--json")
    assert shell.status == 0
    assert said["aligned"] is False
    assert "free field" in said["why"]


def test_why_two_cards_of_one_kind_cant_be_used_is_not_contradicted(
    shell: Shell, tmp_path: Path
) -> None:
    one = taken("disc").rgb
    twice = tmp_path / "twice.jpg"
    Image.fromarray(np.concatenate([one, one], axis=1)).save(twice, quality=92)
    said = shell("align", str(twice), saved(tmp_path, "disc"), "--json")
    assert any("is in the photo twice" in note for note in said["notes"])
    assert said["why"].startswith("No card could be used in the old photo")
