"""Every hostile picture has the outcome it must have, and costs the program next to nothing."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from desktop_app.part_photos.actions import take_in
from desktop_app.part_photos.arrival import Arrival, arrived, spread_out
from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.stored_thumbnails import thumbnails_of
from desktop_app.shop_record.record import ShopRecord
from tests.faults.hostile_pictures.collection import DAMAGED, HOSTILE, TAKEN, Hostile
from tests.faults.hostile_pictures.posing import cut_at
from tests.faults.test_backup_faults import ROOT
from tests.part_photos.bench_pictures import ENDINGS, encoded, noisy, picture

posix = pytest.mark.skipif(os.name == "nt", reason="such files are of another kind there")


def kept_names(shop: ShopRecord) -> list[str]:
    """The paths of all that lies in the folder of the originals."""
    folder = shop.photos.folder
    return [path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()]


@pytest.mark.parametrize("hostile", HOSTILE, ids=[hostile.name for hostile in HOSTILE])
def test_each_has_its_outcome(shop: ShopRecord, tmp_path: Path, hostile: Hostile) -> None:
    content = hostile.make()
    file = tmp_path / hostile.name
    file.write_bytes(content)
    try:
        taken = take_in(shop, arrived(file))
    except PhotoTrouble as refused:
        said = refused.sentence()
        assert said.startswith(f"{hostile.name}: ")
        assert hostile.said != TAKEN, said
        assert hostile.said in said
        assert kept_names(shop) == []
    else:
        assert hostile.said == TAKEN
        assert shop.photos.read(taken.sha256) == content
        assert thumbnails_of(shop).jpeg(taken.sha256, taken.media_type).startswith(b"\xff\xd8\xff")


@pytest.mark.parametrize("kind", ENDINGS)
def test_a_photo_ended_anywhere_is_refused(kind: str) -> None:
    whole = encoded(noisy(200, 150), kind)
    for part in cut_at(whole, 20):
        with pytest.raises(PhotoTrouble, match=DAMAGED):
            look_at("half.jpg", part)
    assert look_at("whole.jpg", whole).width == 200


@posix
def test_what_is_no_file_is_refused_without_waiting(shop: ShopRecord, tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.jpg")
    (tmp_path / "endless.jpg").symlink_to("/dev/zero")
    (tmp_path / "lost.jpg").symlink_to(tmp_path / "gone")
    (tmp_path / "itself.jpg").symlink_to(tmp_path / "itself.jpg")
    (tmp_path / "folder.jpg").mkdir()
    said = {}
    for name in ("pipe", "endless", "lost", "itself", "folder"):
        with pytest.raises(PhotoTrouble) as refused:
            take_in(shop, arrived(tmp_path / f"{name}.jpg"))
        said[name] = refused.value.reason
    no_file = "it is no file but a folder, a device or a pipe."
    assert said == {
        "pipe": no_file,
        "endless": no_file,
        "folder": no_file,
        "lost": "it can't be opened (no such file or directory).",
        "itself": "it can't be opened (too many levels of symbolic links).",
    }


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("../../../etc/cap.jpg", "cap.jpg"),
        ("..\\..\\cap.jpg", "cap.jpg"),
        ("C:\\Windows\\cap.jpg", "cap.jpg"),
        ("cap\u202egpj.exe", "cap\ufffdgpj.exe"),
        ("cap\x00.jpg", "cap\ufffd.jpg"),
        ("CON.jpg", "CON.jpg"),
        ("NUL", "NUL"),
        ("..", ".."),
        ("é" * 127, "é" * 127),
        ("x" * 5_000, "x" * 200),
        ("<b>cap</b><img src=secret.png>", "b><img src=secret.png>"),
    ],
)
def test_a_name_is_shown_on_a_line_and_never_a_path(
    shop: ShopRecord, name: str, shown: str
) -> None:
    before = {
        path for path in shop.folder.parent.rglob("*") if shop.photos.folder not in path.parents
    }
    taken = take_in(shop, Arrival(name, content=encoded(picture())))
    assert taken.name == shown
    (kept,) = kept_names(shop)
    assert re.fullmatch(r"[0-9a-f]{2}/[0-9a-f]{64}", kept)
    after = {
        path for path in shop.folder.parent.rglob("*") if shop.photos.folder not in path.parents
    }
    assert {path.name for path in after - before} == {
        *("photos", "thumbnails", kept[:2], f"{taken.sha256}-256.jpg"),
    }


@pytest.mark.parametrize("name", ["x" * 5_000, "cap\x00.jpg", "x" * 250 + ".jpg"])
def test_a_path_that_no_system_takes_is_refused_by_name(
    shop: ShopRecord, tmp_path: Path, name: str
) -> None:
    (piece,), aside = spread_out([arrived(tmp_path / name)])
    assert aside == []
    with pytest.raises(PhotoTrouble, match="it can't be opened"):
        take_in(shop, piece)


@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="memory is told by /proc")
def test_none_of_them_takes_much_memory_of_the_program(tmp_path: Path) -> None:
    for hostile in HOSTILE:
        (tmp_path / hostile.name).write_bytes(hostile.make())
    words = [sys.executable, "-m", "tests.faults.hostile_pictures.memory_taken"]
    files = sorted(map(str, tmp_path.iterdir()))
    ran = subprocess.run([*words, *files], cwd=ROOT, capture_output=True, text=True, check=True)
    answers = dict(line.rsplit(" ", 1) for line in ran.stdout.splitlines())
    assert len(answers) == len(HOSTILE)
    most = max(answers, key=lambda name: int(answers[name]))
    assert int(answers[most]) < 300_000, f"{most}: {answers[most]} kB"
