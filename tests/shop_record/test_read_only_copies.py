"""Kept photos may only be read; one system replaces and deletes no such file, and backups go on."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from desktop_app.shop_record.backups.generations import make_generation
from desktop_app.shop_record.record import ShopRecord, create_shop
from tests.shop_record.backed_up import through, with_photo
from tests.shop_record.test_generations import Clock

pytestmark = pytest.mark.embedded  # a server's photo would be fetched anew


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    record = create_shop(tmp_path / "shop", Clock())
    yield record
    record.close()


@pytest.fixture(autouse=True)
def _nothing_gives_way(monkeypatch: pytest.MonkeyPatch) -> None:
    really = {"replace": Path.replace, "unlink": Path.unlink}

    def refused(path: Path) -> None:
        if path.exists() and not path.stat().st_mode & 0o200:
            raise PermissionError(13, "Access is denied", str(path))

    def replace(path: Path, to: Path) -> Path:
        refused(to)
        return really["replace"](path, to)

    def unlink(path: Path, missing_ok: bool = False) -> None:
        refused(path)
        really["unlink"](path, missing_ok)

    monkeypatch.setattr(Path, "replace", replace)
    monkeypatch.setattr(Path, "unlink", unlink)


def write_over(path: Path, content: bytes) -> None:
    """Change a file that may only be read, and leave it so."""
    path.chmod(0o644)
    path.write_bytes(content)
    path.chmod(0o444)


def may_be_written(path: Path) -> bool:
    return bool(path.stat().st_mode & 0o222)


def test_a_second_name_of_a_photo_becomes_a_copy(shop: ShopRecord) -> None:
    base, clock = shop.folder / "backups", Clock()
    photo = with_photo(shop)
    through(make_generation(shop.folder, base, clock(), "before an import"))
    copy, kept = base / "photos" / photo[:2] / photo, shop.photos.path(photo)
    assert copy.samefile(kept)
    clock.later(days=1)
    through(make_generation(shop.folder, base, clock()))
    assert not copy.samefile(kept)
    assert not may_be_written(copy)
    assert not may_be_written(kept)


def test_a_damaged_copy_is_copied_anew_or_goes(shop: ShopRecord) -> None:
    base, clock = shop.folder / "backups", Clock()
    photo = with_photo(shop)
    through(make_generation(shop.folder, base, clock()))
    copy, kept = base / "photos" / photo[:2] / photo, shop.photos.path(photo)
    write_over(copy, b"a ph")
    clock.later(days=1)
    through(make_generation(shop.folder, base, clock()))
    assert copy.read_bytes() == b"a photo"
    write_over(copy, b"a ph")
    write_over(kept, b"another")
    clock.later(days=1)
    made = through(make_generation(shop.folder, base, clock()))
    assert made.manifest.missing_photos == (photo,)
    assert not copy.exists()


def test_photos_of_generations_that_went_go_too(shop: ShopRecord) -> None:
    base, clock = shop.folder / "backups", Clock()
    photo = with_photo(shop)
    through(make_generation(shop.folder, base, clock()))
    shop.know_tables()
    shop.undo()
    shop.photos.path(photo).chmod(0o644)
    shop.photos.path(photo).unlink()
    for _ in range(20):
        clock.later(days=31)
        through(make_generation(shop.folder, base, clock()))
    assert list(base.glob("photos/??/*")) == []
