"""`barcodes` says what photos of labels show, or in one line what is no photo."""

from __future__ import annotations

from pathlib import Path

import pytest
from zxingcpp import BarcodeFormat as Form

from tests.commands.test_command_line import Shell
from tests.part_photos.bench_pictures import encoded, noisy
from tests.part_photos.code_scenes import VIN, bars, label, photo_of


@pytest.fixture
def shell(capsys: pytest.CaptureFixture[str]) -> Shell:
    """A shell to type commands into."""
    return Shell(capsys)


@pytest.fixture
def photos(tmp_path: Path) -> Path:
    """A folder with photos of a label, of a car's label, and of neither."""
    printed = label(bars("4006381333931", Form.EAN13), bars("4711-22", Form.Code128))
    car = VIN[:-1] + "9"  # its check digit would be another
    (tmp_path / "box.jpg").write_bytes(encoded(photo_of(printed)))
    (tmp_path / "door.png").write_bytes(
        encoded(photo_of(label(bars(car, Form.QRCode)), 300), "PNG")
    )
    (tmp_path / "bare.jpg").write_bytes(encoded(noisy(200, 150)))
    (tmp_path / "torn.jpg").write_bytes(encoded(noisy(200, 150))[:900])
    (tmp_path / "note.txt").write_text("4711", encoding="utf-8")
    return tmp_path


def test_a_label_s_codes_and_what_they_may_be(shell: Shell, photos: Path) -> None:
    said = shell("barcodes", str(photos / "box.jpg"), "--json")
    assert said["photo"] == "box.jpg"
    assert {"form": "EAN-13", "text": "4006381333931"} in said["codes"]
    says = {one["value"]: (one["what"], one["check_digit_ok"]) for one in said["says"]}
    assert says == {
        "4006381333931": ("article number", True),
        "4711-22": ("part number", None),
    }


def test_several_photos_are_a_list_in_their_order(shell: Shell, photos: Path) -> None:
    said = shell("barcodes", str(photos / "bare.jpg"), str(photos / "door.png"), "--json")
    assert said[0] == {"photo": "bare.jpg", "codes": [], "says": []}
    assert [(one["what"], one["check_digit_ok"]) for one in said[1]["says"]] == [
        ("VIN", False),
        ("part number", None),
    ]


@pytest.mark.parametrize("name", ["torn.jpg", "note.txt", "missing.jpg", "."])
def test_what_is_no_photo_is_refused_in_one_line(shell: Shell, photos: Path, name: str) -> None:
    said = shell.refused("barcodes", str(photos / "box.jpg"), str(photos / name))
    assert Path(name).name in said


def test_a_person_reads_the_same(shell: Shell, photos: Path) -> None:
    shell("barcodes", *(str(photos / name) for name in ("bare.jpg", "door.png")))
    assert shell.out.splitlines() == [
        "bare.jpg: nothing of use",
        "door.png: VIN 1M8GDM9AXKP042789 (its check digit is another)",
        "door.png: part number 1M8GDM9AXKP042789",
    ]
