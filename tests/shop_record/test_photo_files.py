"""Photo files: whole or not there, named by their hash, never changed."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

import pytest

from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.trouble import ShopTrouble


@pytest.fixture
def files(tmp_path: Path) -> PhotoFiles:
    return PhotoFiles(tmp_path / "photos")


def test_a_photo_is_kept_as_it_came_under_its_hash(files: PhotoFiles) -> None:
    name = files.keep(b"a photo")
    assert name == hashlib.sha256(b"a photo").hexdigest()
    assert files.read(name) == b"a photo"
    assert files.path(name).parent.name == name[:2]
    assert list(files.all_names()) == [name]


def test_the_same_photo_twice_is_one_file(files: PhotoFiles) -> None:
    assert files.keep(b"a photo") == files.keep(b"a photo")
    assert len(list(files.all_names())) == 1


def test_a_changed_or_missing_file_is_known(files: PhotoFiles) -> None:
    name = files.keep(b"a photo")
    assert files.is_whole(name) is True
    files.path(name).chmod(0o644)
    files.path(name).write_bytes(b"another")
    assert files.is_whole(name) is False
    files.path(name).unlink()
    assert files.is_whole(name) is None
    with pytest.raises(ShopTrouble, match="not in the shop's folder"):
        files.read(name)


@pytest.mark.parametrize("step", ["fsync", "replace"])
def test_a_disk_that_refuses_leaves_nothing_and_says_so(
    files: PhotoFiles, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    if step == "fsync":
        monkeypatch.setattr(os, "fsync", full)
    else:
        monkeypatch.setattr(Path, "replace", full)
    with pytest.raises(ShopTrouble, match="No space left on device"):
        files.keep(b"a photo")
    assert list(files.all_names()) == []
