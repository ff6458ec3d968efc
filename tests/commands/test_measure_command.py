"""`measure` keeps its contract: one document of sizes, or one line that says what to mend."""

from __future__ import annotations

import json
import os
import re
import sys
from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from typing import Any, get_args

import cv2
import numpy as np
import pytest
from PIL import Image

from desktop_app.part_photos.bench_card.card_file import card_json
from desktop_app.part_photos.camera.lens import project
from desktop_app.part_photos.marks.mark import OUTLINES, MarkType
from desktop_app.part_photos.marks.marks_file import read_marks
from desktop_app.shop_record.trouble import ShopTrouble
from tests.commands.test_command_line import Shell
from tests.part_photos.camera_pictures import DOTS, View, _print, small_card
from tests.part_photos.marked_photos import photo_of

# A dark plate on the card, 40.0 by 18.0 mm: its left, top, right and bottom edge in mm.
PLATE = (40.0, 34.0, 80.0, 52.0)
VIEW = View(tilt=14.0, towards=30.0, roll=10.0, k1=0.0, fingers=(PLATE,))


FINE = 4  # each pixel is the mean of 4 by 4


def plate_photo() -> Image.Image:
    """The card with the plate on it; without a lens's bend one projection draws it at once."""
    light = _print(small_card(), VIEW)
    corners = np.array([[0, 0], [100, 0], [100, 80], [0, 80]], float)
    seen = (project(VIEW.theta(), np.column_stack([corners, np.zeros(4)])) + 0.5) * FINE - 0.5
    onto = cv2.getPerspectiveTransform(
        (corners * DOTS - 0.5).astype(np.float32), seen.astype(np.float32)
    )
    wide, high = VIEW.size
    size = (wide * FINE, high * FINE)
    fine = cv2.warpPerspective(light, onto, size, borderValue=VIEW.white * 0.6)
    pixels = fine.reshape(high, FINE, wide, FINE).mean((1, 3))
    noise = np.random.default_rng(1).normal(0, 0.004, pixels.shape)
    return Image.fromarray(photo_of(cv2.GaussianBlur(pixels, (0, 0), 0.6) + noise).rgb)


def says_focal(orientation: int = 1) -> Image.Exif:
    exif = Image.Exif()
    exif[274] = orientation
    exif.get_ifd(0x8769)[0xA405] = round(VIEW.focal * 43.267 / np.hypot(*VIEW.size))
    exif.get_ifd(0x8769)[0xA002], exif.get_ifd(0x8769)[0xA003] = VIEW.size
    return exif


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a photo of a plate on a card, and the card's layout."""
    folder = tmp_path_factory.mktemp("bench")
    plate_photo().save(folder / "plate.jpg", quality=95, exif=says_focal())
    (folder / "card.json").write_text(card_json(small_card()), "utf-8")
    Image.new("RGB", (960, 720), "#c0c0c0").save(folder / "bare.png")
    return folder


@pytest.fixture
def shell(capsys: pytest.CaptureFixture[str]) -> Shell:
    return Shell(capsys)


def at(*points_mm: tuple[float, float]) -> list[list[float]]:
    """Where the camera saw points of the card; a click is up to a pixel off."""
    flat = np.column_stack([np.array(points_mm), np.zeros(len(points_mm))])
    off = np.random.default_rng(5).uniform(-0.8, 0.8, (len(points_mm), 2))
    return (project(VIEW.theta(), flat) + off).tolist()


LEFT, TOP, RIGHT, BOTTOM = PLATE
PLATE_MARKS: list[dict[str, Any]] = [
    {"name": "width", "type": "length", "points_px": at((LEFT, 43), (RIGHT, 43)), "height_mm": 0},
    {
        "name": "depth",
        "type": "point-to-line",
        "points_px": at((60, TOP), (45, BOTTOM), (75, BOTTOM)),
        "height_mm": 0,
    },
    {"name": "corner", "type": "angle", "points_px": at((75, TOP), (LEFT, TOP), (LEFT, 50))},
    {
        "name": "sides",
        "type": "parallel-distance",
        "points_px": at((LEFT, 37), (LEFT, 49), (RIGHT, 38), (RIGHT, 50)),
    },
]
HALF_ON_EDGE = {
    "name": "half",
    "type": "length",
    "points_px": at((LEFT, 43), (60, 43)),
    "height_mm": 0,
}
LOOK = {"name": "look here", "type": "note", "points_px": [[480, 350], [500, 200]]}
TRUE = {"width": 40.0, "depth": 18.0, "corner": 90.0, "sides": 40.0}


def asks(folder: Path, name: str = "marks.json", **fields: Any) -> str:
    document = {"scale": {"card": "card.json", "card_scale": 1.0}, "marks": PLATE_MARKS}
    (folder / name).write_text(json.dumps({**document, **fields}), "utf-8")
    return str(folder / name)


@pytest.mark.parametrize("snap", [False, True])
def test_sizes_come_with_their_doubt(shell: Shell, bench: Path, snap: bool) -> None:
    said = shell("measure", str(bench / "plate.jpg"), asks(bench, snap=snap), "--json")
    assert shell.status == 0
    assert set(said) == {"scale", "marks", "warnings"}
    assert said["scale"]["source"] == "card"
    assert said["scale"]["tilt_deg"] == pytest.approx(14.0, abs=0.5)
    assert said["scale"]["distance_mm"] == pytest.approx(220.0, rel=0.02)
    assert [mark["name"] for mark in said["marks"]] == list(TRUE)
    for mark in said["marks"]:
        assert mark["unit"] == ("deg" if mark["type"] == "angle" else "mm")
        assert mark["coverage"] == 0.95
        assert abs(mark["value"] - TRUE[mark["name"]]) < 1.5 * mark["expanded_uncertainty"]
        assert {"pointing", "scale", "height"} <= set(mark["budget"])
        whole = np.hypot.reduce(list(mark["budget"].values()))
        assert mark["expanded_uncertainty"] == pytest.approx(1.96 * whole)
        assert any(mark["snapped"]) == snap
    if snap:
        width = said["marks"][0]
        assert width["snapped"] == [True, True]
        assert width["value"] == pytest.approx(40.0, abs=0.1)


def test_a_height_that_is_not_said_is_spoken_of(shell: Shell, bench: Path) -> None:
    said = shell("measure", str(bench / "plate.jpg"), asks(bench), "--json")
    spoken = " ".join(said["warnings"])
    assert "No height is given for mark 4 “sides”" in spoken
    assert "width" not in spoken


def test_a_person_reads_sizes_in_lines(shell: Shell, bench: Path) -> None:
    marks = [*PLATE_MARKS[:1], *PLATE_MARKS[3:], HALF_ON_EDGE, LOOK]
    shell("measure", str(bench / "plate.jpg"), asks(bench, marks=marks, snap=True))
    first, width, sides, half, look, *spoken = shell.out.splitlines()
    assert first.startswith("Scale from the card: tilt 14°, 2")
    assert width.startswith("width: 40.")
    assert " ± " in width
    assert width.endswith(" mm; all points on edges")
    assert sides.endswith(" mm; height not said: holds only on the card; all points on edges")
    assert half.startswith("half: ")
    assert half.endswith(" mm; on an edge: point 1 of 2")
    assert look == "look here: a note on the point (480, 350)"
    assert spoken[0].startswith("  No height is given for mark 2 “sides”")
    shell("measure", str(bench / "plate.jpg"), asks(bench, marks=marks[:1]))
    assert shell.out.splitlines()[1].endswith(" mm")
    bare = [{"name": "bare", "type": "length", "points_px": [[300, 300], [500, 300]]}]
    shell("measure", str(bench / "bare.png"), asks(bench, scale=TWO, marks=bare, snap=True))
    assert shell.out.splitlines()[1].endswith(" mm; no edge found: points as marked")


TWO = {"points_px": [[100, 100], [500, 100]], "length_mm": 40.0, "length_u_mm": 0.1}
SIMPLE = [
    {"name": "a", "type": "length", "points_px": [[100, 100], [400, 500]]},
    {"name": "cut", "type": "note", "points_px": [[10, 10], [50, 50]]},
    {"name": "teeth", "type": "count", "points_px": [[10, 10], [600, 10]]},
]


def test_two_points_measure_in_their_plane(shell: Shell, bench: Path) -> None:
    marks = asks(bench, scale=TWO, marks=SIMPLE)
    said = shell("measure", str(bench / "bare.png"), marks, "--json")
    assert said["scale"] == {"source": "points", "tilt_deg": None, "distance_mm": None}
    length, note, count = said["marks"]
    assert length["value"] == pytest.approx(50.0)
    assert note["value"] is None
    assert count["value"] is None
    assert count["expanded_uncertainty"] is None
    assert any("only in the plane" in warning for warning in said["warnings"])
    assert any("teeth”: This can't be counted" in warning for warning in said["warnings"])


def test_ribs_are_counted(shell: Shell, bench: Path) -> None:
    stripes = (np.arange(300) // 15 % 2 == 0) * 180 + 40
    Image.fromarray(np.repeat(stripes[None].astype(np.uint8), 80, 0)).save(bench / "ribs.png")
    ribs = {"name": "ribs", "type": "count", "points_px": [[67, 40], [247, 41]]}
    marks = asks(bench, scale={**TWO, "points_px": [[0, 5], [200, 5]]}, marks=[ribs])
    said = shell("measure", str(bench / "ribs.png"), marks, "--json")
    assert (said["marks"][0]["value"], said["marks"][0]["unit"]) == (6, "")
    shell("measure", str(bench / "ribs.png"), marks)
    assert "ribs: 6\n" in shell.out


def test_several_photos_make_a_list_in_order(shell: Shell, bench: Path) -> None:
    one, two = asks(bench, "one.json", snap=True), asks(bench, "two.json", scale=TWO, marks=SIMPLE)
    photos = str(bench / "plate.jpg"), str(bench / "bare.png")
    said = shell("measure", photos[0], one, photos[1], two, "--json")
    assert [each["scale"]["source"] for each in said] == ["card", "points"]
    shell("measure", photos[0], one, photos[1], two)
    assert [line for line in shell.out.splitlines() if line.endswith(":")] == [
        "plate.jpg:",
        "bare.png:",
    ]


def test_the_card_is_looked_for_beside_the_marks_then_here(
    shell: Shell, bench: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    marks = asks(tmp_path, marks=PLATE_MARKS[:1])
    photo = str(bench / "plate.jpg")
    assert "card “card.json” is not there" in shell.refused("measure", photo, marks)
    monkeypatch.chdir(bench)
    assert shell("measure", photo, marks, "--json")["marks"]
    (tmp_path / "card.json").write_text("{}", "utf-8")
    assert "card.json: dictionary" in shell.refused("measure", photo, marks)


OUTSIDE = {"type": "length", "points_px": [[5, 5], [970, 5]]}
FLAT = {"name": "bore", "type": "circle", "points_px": [[1, 1], [50, 50], [90, 90]]}
HIGH = {"type": "length", "points_px": [[400, 300], [500, 300]], "height_mm": 300}
CARD = {"card": "card.json"}


@pytest.mark.parametrize(
    ("photo", "fields", "said"),
    [
        ("plate.jpg", {"marks": [OUTSIDE]}, "mark 1: the point (970, 5) lies outside"),
        ("plate.jpg", {"marks": [FLAT], "scale": TWO}, "mark 1 “bore”: No circle can be drawn"),
        ("plate.jpg", {"marks": [HIGH]}, "mark 1: “length” can't lie 300 mm above"),
        ("plate.jpg", {"marks": 5}, "marks is missing or no list"),
        ("bare.png", {"scale": CARD}, "bare.png: "),
        ("gone.jpg", {}, "There is no file "),
        ("card.json", {}, "card.json: this is"),
        ("paper.pdf", {}, "paper.pdf: this is a PDF document; photos are JPEG, PNG, HEIC and WebP"),
        ("cut.jpg", {}, "cut.jpg: the picture is damaged"),
        (".", {}, "is a folder. Accepted: a photo as JPEG, PNG, HEIC or WebP"),
        (
            "plate.jpg",
            {"scale": {"card": "plate.jpg"}},
            "is a photo, no text file. Accepted: a lay",
        ),
        ("plate.jpg", {"scale": {"card": "x" * 5000}}, "scale: card"),
    ],
)
def test_what_cannot_be_measured_is_one_line(
    shell: Shell, bench: Path, photo: str, fields: dict[str, Any], said: str
) -> None:
    (bench / "paper.pdf").write_bytes(b"%PDF-1.7")
    (bench / "cut.jpg").write_bytes((bench / "plate.jpg").read_bytes()[:9000])
    assert said in shell.refused("measure", str(bench / photo), asks(bench, **fields), "--json")


def test_a_photo_without_its_marks_is_refused(shell: Shell, bench: Path) -> None:
    photo = str(bench / "plate.jpg")
    assert "has no partner" in shell.refused("measure", photo)
    assert "has no partner" in shell.refused("measure", photo, asks(bench), photo)
    assert "A file's name is empty" in shell.refused("measure", "", asks(bench))


def test_a_file_that_may_not_be_read_is_said(
    shell: Shell, bench: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    marks = asks(bench)
    may = os.access
    monkeypatch.setattr(os, "access", lambda path, how: may(path, how) and "plate" not in str(path))
    line = shell.refused("measure", str(bench / "plate.jpg"), marks)
    assert "plate.jpg may not be read: permission denied." in line


@pytest.mark.parametrize(
    ("write", "said"),
    [
        (lambda path: path.write_bytes(b"\xff\xfe\x00"), "not a UTF-8 text file"),
        (lambda path: path.write_text("{", "utf-8"), "not JSON"),
        (lambda path: path.mkdir(), "is a folder. Accepted: PHOTO MARKS.json"),
        (lambda path: os.mkfifo(path), "is a device or a pipe. Accepted: PHOTO MARKS.json"),
        (lambda path: None, "There is no file "),
        (lambda path: path.write_bytes(b"\xff\xd8\xff\xe0"), "is a photo, no text file"),
        (lambda path: path.write_bytes(b""), "not JSON"),
    ],
)
def test_marks_that_are_no_text_are_refused(
    shell: Shell, bench: Path, tmp_path: Path, write: Callable[[Path], object], said: str
) -> None:
    write(tmp_path / "marks.json")
    marks = str(tmp_path / "marks.json")
    assert said in shell.refused("measure", str(bench / "plate.jpg"), marks)


def test_the_readme_says_what_a_file_of_marks_may_hold() -> None:
    readme = (Path(__file__).parents[2] / "README.md").read_text("utf-8")
    (example,) = re.findall(r"```json\n(.*?)```", readme, re.DOTALL)
    assert len(read_marks(example, "README.md").marks) == 3
    rows = re.findall(r"^\| `([a-z-]+)` \| (\d)", readme, re.MULTILINE)
    assert {kind for kind, _ in rows} == set(get_args(MarkType)) - OUTLINES
    for kind, points in rows:
        mark = {"type": kind, "points_px": [[n, n * n] for n in range(int(points))]}
        read_marks(json.dumps({"scale": TWO, "marks": [mark]}), "README.md")
        mark["points_px"].pop()
        with pytest.raises(ShopTrouble, match="points_px has"):
            read_marks(json.dumps({"scale": TWO, "marks": [mark]}), "README.md")


def test_many_marks_are_counted_on_a_terminal_and_nowhere_else(
    shell: Shell, bench: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    marks = asks(bench, scale=TWO, marks=SIMPLE[:1] * 3)
    monkeypatch.setattr("desktop_app.commands.counting.EVERY_SECONDS", 0.0)
    shell("measure", str(bench / "bare.png"), marks, "--json")
    assert shell.err == ""
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True)
    said = shell("measure", str(bench / "bare.png"), marks, "--json")
    assert len(said["marks"]) == 3
    steps = shell.err.split("\r")
    assert steps[:4] == ["", *(f"bare.png: {n} of 3 marks" for n in (1, 2, 3))]
    assert "".join(steps[4:]).strip(" ") == ""  # wiped off, no line of its own
    wrong = asks(bench, scale=TWO, marks=[*SIMPLE[:1], FLAT])
    line = shell.refused("measure", str(bench / "bare.png"), wrong)
    assert line.split("\r")[-1].startswith("marks.json: mark 2 “bore”: No circle")


def test_a_turned_photo_is_measured_upright(shell: Shell, bench: Path) -> None:
    with Image.open(BytesIO((bench / "plate.jpg").read_bytes())) as upright:
        turned = upright.transpose(Image.Transpose.ROTATE_90)
    # Exif 2.2, Orientation 6: to be turned a quarter to the right.
    turned.save(bench / "turned.jpg", quality=95, exif=says_focal(6))
    said = shell("measure", str(bench / "turned.jpg"), asks(bench, snap=True), "--json")
    assert said["marks"][0]["value"] == pytest.approx(40.0, abs=0.15)


def test_a_print_that_is_far_off_is_doubted(shell: Shell, bench: Path) -> None:
    far = asks(bench, "far.json", scale={"card": "card.json", "card_scale": 0.94})
    said = shell("measure", str(bench / "plate.jpg"), far, "--json")
    assert shell.status == 0
    assert any("6.0% smaller than drawn" in one for one in said["warnings"])
