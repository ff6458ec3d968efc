"""The sealed copy of a job: whole as it was made, and whatever is changed in it is found."""

from __future__ import annotations

import hashlib
import json
import subprocess
import sys
import zipfile
from datetime import timedelta
from importlib import metadata
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.job_history.sealing_actions import proposed_name
from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.repair_jobs.actions import add_job, name_cause
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.past.anchor import anchor_now
from desktop_app.shop_record.record import ShopRecord, create_shop
from desktop_app.shop_record.trouble import ShopDamaged
from tests.conftest import NOON
from tests.from_outside import damage, spoil_photo
from tests.job_history.told import copied, history, sealed, verified
from tests.part_photos.bench_pictures import encoded, noisy
from tests.parts_compared.sheet_story import RotorStory, a_rotor

WHOLE = "Whole: every file, and the chain of all entries."
PHOTO = encoded(noisy(40, 30, 1), "JPEG")


def with_photo(record: ShopRecord, job: int, content: bytes, name: str = "tip.jpg") -> None:
    add_photos(record, job, [take_in(record, Arrival(name, content=content))])


def a_story(record: ShopRecord) -> RotorStory:
    """A measured job with a photo, and entries of others before, between and after."""
    with record.deed("An older car") as deed:
        deed.add(Vehicle, plate="OLD 1", odometer_unit="mi")
    rotor = a_rotor(record)
    add_job(record, 1, "The neighbour's secret")
    with_photo(record, rotor.job, PHOTO)
    with record.deed("A younger car") as deed:
        deed.add(Vehicle, plate="NEW 1", odometer_unit="mi")
    return rotor


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    return a_story(shop)


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A whole copy, which nobody changes."""
    folder = tmp_path_factory.mktemp("whole")
    record = create_shop(folder / "shop", lambda: NOON)
    rotor = a_story(record)
    sealed(record, rotor.job, folder / "copy")
    record.close()
    return folder / "copy"


@pytest.fixture(scope="module")
def spoilt(whole: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy in which tests change a byte and put it back."""
    return copied(whole, tmp_path_factory.mktemp("spoilt") / "copy")


def files_in(folder: Path) -> list[str]:
    return sorted(f.relative_to(folder).as_posix() for f in folder.rglob("*") if f.is_file())


def test_it_is_whole_as_it_was_made(whole: Path) -> None:
    assert verified(whole) == (0, WHOLE)


def test_its_own_verifier_says_so_too_when_it_is_run_there(whole: Path) -> None:
    order = [sys.executable, "verify.py"]
    done = subprocess.run(order, cwd=whole, capture_output=True, text=True, check=True)
    assert done.stdout.strip() == WHOLE


def test_the_verifier_is_short_and_uses_the_standard_library_alone() -> None:
    lines = resource_path("sealed_copy", "verify.py").read_text("utf-8").splitlines()
    assert len(lines) < 70
    imported = {line.split()[1] for line in lines if line.startswith(("import", "from"))}
    assert imported == {"hashlib", "json", "pathlib", "sys"}


def test_what_is_in_it(whole: Path) -> None:
    name = hashlib.sha256(PHOTO).hexdigest()
    assert set(files_in(whole)) == {
        *("READ ME.txt", "comparison-sheet.pdf", "entries.jsonl", "history.txt", "manifest.json"),
        *("seal.txt", "verify.py", f"photos/{name}.jpg"),
    }
    assert (whole / "photos" / f"{name}.jpg").read_bytes() == PHOTO
    assert (whole / "comparison-sheet.pdf").read_bytes().startswith(b"%PDF")
    assert (whole / "verify.py").read_bytes() == resource_path(
        "sealed_copy", "verify.py"
    ).read_bytes()
    text = (whole / "history.txt").read_text("utf-8")
    assert "Added: Photo, tip.jpg" in text
    assert text.index("Take a car in") < text.index("Added: Photo, tip.jpg")


def test_the_manifest_says_head_version_when_and_every_file(rotor: RotorStory) -> None:
    to = rotor.record.folder.parent / "copy"
    made = sealed(rotor.record, rotor.job, to)
    said = json.loads((to / "manifest.json").read_text("utf-8"))
    with rotor.record.reading() as connection:
        anchor = anchor_now(connection)
    assert anchor == f"history {said['head']['number']}, {said['head']['hash'][:16]}"
    assert said["made_at"] == NOON.isoformat()
    assert said["program"].startswith("benchwitness")
    assert set(said["files"]) == set(files_in(to)) - {"manifest.json", "seal.txt"}
    assert (to / "seal.txt").read_text("utf-8") == f"{made.seal}\n"
    assert made.seal == hashlib.sha256((to / "manifest.json").read_bytes()).hexdigest()


def test_a_program_that_was_never_installed_seals_without_a_version(
    rotor: RotorStory, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def unknown(name: str) -> str:
        raise metadata.PackageNotFoundError(name)

    monkeypatch.setattr(metadata, "version", unknown)
    assert sealed(rotor.record, rotor.job, tmp_path / "copy").facts.program == "benchwitness"


def test_entries_of_other_jobs_show_their_hashes_alone(whole: Path) -> None:
    text = (whole / "entries.jsonl").read_text("utf-8")
    entries = [json.loads(line) for line in text.splitlines()]
    assert "The neighbour's secret" not in text
    assert "NEW 1" not in text
    others = [entry for entry in entries if "body" not in entry]
    assert len(others) == 2
    assert all(set(entry) == {"number", "inner", "hash"} for entry in others)
    assert entries[0]["number"] > 1  # the older car's entry is covered by the hash before


@settings(max_examples=60)
@given(data=st.data())
def test_a_flipped_bit_anywhere_in_it_is_found(spoilt: Path, data: st.DataObject) -> None:
    name = data.draw(st.sampled_from(files_in(spoilt)))
    file = spoilt / name
    content = file.read_bytes()
    at = data.draw(st.integers(0, len(content) - 1))
    bit = data.draw(st.integers(0, 7))
    file.write_bytes(content[:at] + bytes([content[at] ^ 1 << bit]) + content[at + 1 :])
    status, said = verified(spoilt)
    file.write_bytes(content)
    assert status == 1
    assert said.startswith("NOT WHOLE: ")
    blamed = ["entry ", "entries"] if name == "entries.jsonl" else [name]
    assert any(one in said for one in blamed)


@pytest.mark.parametrize("place", ["first", "last"])
def test_the_ends_of_each_file_are_held_too(spoilt: Path, place: str) -> None:
    for name in files_in(spoilt):
        content = (spoilt / name).read_bytes()
        cut = content[1:] if place == "first" else content[:-1]
        (spoilt / name).write_bytes(cut)
        assert verified(spoilt)[0] == 1, name
        (spoilt / name).write_bytes(content)
    assert verified(spoilt) == (0, WHOLE)


def test_a_file_that_is_missing_or_was_put_in_is_named(whole: Path, tmp_path: Path) -> None:
    one = copied(whole, tmp_path / "one")
    (one / "history.txt").unlink()
    assert verified(one) == (1, "NOT WHOLE: history.txt is missing or not as it was sealed.")
    other = copied(whole, tmp_path / "other")
    (other / "photos" / "another.jpg").write_bytes(b"x")
    said = "NOT WHOLE: photos/another.jpg does not belong to the copy."
    assert verified(other) == (1, said)


def resealed(folder: Path, **changed: Any) -> None:
    """What a forger does who knows the form: all checksums are made anew."""
    said = json.loads((folder / "manifest.json").read_text("utf-8")) | changed
    for name in said["files"]:
        said["files"][name] = hashlib.sha256((folder / name).read_bytes()).hexdigest()
    content = json.dumps(said, indent=1).encode()
    (folder / "manifest.json").write_bytes(content)
    (folder / "seal.txt").write_text(hashlib.sha256(content).hexdigest() + "\n")


def test_an_entry_that_was_changed_is_named_though_all_was_sealed_anew(
    whole: Path, tmp_path: Path
) -> None:
    forged = copied(whole, tmp_path / "forged")
    lines = (forged / "entries.jsonl").read_text("utf-8")
    number = json.loads(lines.splitlines()[0])["number"]
    (forged / "entries.jsonl").write_text(lines.replace("burned back", "was just fine", 1))
    resealed(forged)
    assert verified(forged) == (1, f"NOT WHOLE: entry {number} is not as it was written.")


def test_entries_cut_off_at_the_end_are_missed(whole: Path, tmp_path: Path) -> None:
    forged = copied(whole, tmp_path / "forged")
    lines = (forged / "entries.jsonl").read_text("utf-8").splitlines(keepends=True)
    (forged / "entries.jsonl").write_text("".join(lines[:-1]))
    resealed(forged)
    status, said = verified(forged)
    assert (status, said.endswith("are missing.")) == (1, True)


def test_another_photo_under_the_old_ones_name_is_found(whole: Path, tmp_path: Path) -> None:
    forged = copied(whole, tmp_path / "forged")
    other = encoded(noisy(40, 30, 2), "JPEG")
    said = json.loads((forged / "manifest.json").read_text("utf-8"))
    said["photos"][0]["sha256"] = hashlib.sha256(other).hexdigest()
    (forged / said["photos"][0]["file"]).write_bytes(other)
    resealed(forged, photos=said["photos"])
    status, told = verified(forged)
    assert status == 1
    assert f"is not the photo that entry {said['photos'][0]['entry']} names" in told


def test_a_whole_forged_chain_is_found_by_an_anchor(rotor: RotorStory, tmp_path: Path) -> None:
    """Whoever has the record can write a chain that holds; the customer's sheet tells."""
    with rotor.record.reading() as connection:
        number, begin = anchor_now(connection).removeprefix("history ").split(", ")
    sealed(rotor.record, rotor.job, tmp_path / "true")
    assert verified(tmp_path / "true", number, begin) == (0, WHOLE)
    other = create_shop(tmp_path / "other", lambda: NOON - timedelta(days=1))
    forged = a_story(other)
    sealed(other, forged.job, tmp_path / "forged")
    other.close()
    assert verified(tmp_path / "forged") == (0, WHOLE)
    said = f"NOT WHOLE: entry {number} is another one than the anchor says."
    assert verified(tmp_path / "forged", number, begin) == (1, said)
    assert verified(tmp_path / "true", "99999", begin)[0] == 1
    assert verified(tmp_path / "true", "no number", begin)[0] == 1


def test_every_anchor_from_the_jobs_first_entry_on_can_be_compared(whole: Path) -> None:
    for line in (whole / "entries.jsonl").read_text("utf-8").splitlines():
        entry = json.loads(line)
        assert verified(whole, str(entry["number"]), entry["hash"][:16]) == (0, WHOLE)


def test_the_zip_holds_the_same(rotor: RotorStory, tmp_path: Path) -> None:
    sealed(rotor.record, rotor.job, tmp_path / "copy.zip")
    with zipfile.ZipFile(tmp_path / "copy.zip") as archive:
        assert all(name.startswith("sealed-copy-J-104/") for name in archive.namelist())
        archive.extractall(tmp_path / "unpacked")
    assert verified(tmp_path / "unpacked" / "sealed-copy-J-104") == (0, WHOLE)


HOSTILE = [
    *("../../evil.jpg", "/etc/evil.jpg", "C:\\evil.jpg", "con.jpg", "a\u202egpj.exe"),
    "<b>{shop}",
]


@pytest.mark.parametrize("name", HOSTILE)
def test_hostile_names_and_texts_stay_inside(shop: ShopRecord, tmp_path: Path, name: str) -> None:
    rotor = a_rotor(shop, number=name, concern="{number} <img src=x> ](http://x)")
    change_rule(shop, "shop_name", "{made}\u2028 ../ {number}")
    with_photo(shop, rotor.job, PHOTO, name)
    name_cause(shop, rotor.job, '"row_id":1,"table":"job"\u2028{hash_only}')
    place = tmp_path / "out"
    place.mkdir()
    sealed(shop, rotor.job, place / "copy")
    sealed(shop, rotor.job, place / "copy.zip")
    assert verified(place / "copy") == (0, WHOLE)
    assert sorted(one.name for one in place.iterdir()) == ["copy", "copy.zip"]
    assert len(files_in(place / "copy")) == 8
    with zipfile.ZipFile(place / "copy.zip") as archive:
        for one in archive.namelist():
            assert one.startswith(f"{proposed_name(name)}/")
            assert not {"..", "\\", ":"} & set(one.split("/"))
            assert one.isascii()
    assert "{" not in proposed_name(name) + "".join(files_in(place / "copy"))


def test_a_photo_that_was_taken_out_again_is_in_it_and_said_so(
    rotor: RotorStory, tmp_path: Path
) -> None:
    other = encoded(noisy(40, 30, 3), "JPEG")
    with_photo(rotor.record, rotor.job, other)
    rotor.record.undo()
    made = sealed(rotor.record, rotor.job, tmp_path / "copy")
    assert sorted(photo.in_job for photo in made.facts.photos) == [False, True]
    assert verified(tmp_path / "copy") == (0, WHOLE)


def test_a_photo_that_was_taken_out_and_added_again_lies_in_it_once(
    rotor: RotorStory, tmp_path: Path
) -> None:
    other = encoded(noisy(40, 30, 3), "JPEG")
    with_photo(rotor.record, rotor.job, other)
    rotor.record.undo()
    with_photo(rotor.record, rotor.job, other)
    made = sealed(rotor.record, rotor.job, tmp_path / "copy")
    sha256 = hashlib.sha256(other).hexdigest()
    again = [photo for photo in made.facts.photos if photo.sha256 == sha256]
    assert [photo.in_job for photo in again] == [False, True]
    assert len(list((tmp_path / "copy" / "photos").iterdir())) == 2
    assert verified(tmp_path / "copy") == (0, WHOLE)


def test_a_photo_that_is_damaged_in_the_shop_is_left_out_and_told(
    rotor: RotorStory, tmp_path: Path
) -> None:
    sha256 = hashlib.sha256(PHOTO).hexdigest()
    spoil_photo(rotor.record, sha256, PHOTO[:-1])
    made = sealed(rotor.record, rotor.job, tmp_path / "copy")
    assert made.facts.missing_photos == (sha256,)
    assert f"gone or damaged in the shop: photo {sha256}" in (
        tmp_path / "copy" / "READ ME.txt"
    ).read_text("utf-8")
    assert verified(tmp_path / "copy") == (0, WHOLE)


def test_a_history_that_is_not_whole_is_refused_by_the_entrys_number(
    rotor: RotorStory, tmp_path: Path
) -> None:
    damage(rotor.record, "UPDATE history SET body = replace(body, 'burned back', 'was fine')")
    first = history(rotor.record, rotor.job).first
    with pytest.raises(ShopDamaged, match=f"Entry {first} of the history"):
        sealed(rotor.record, rotor.job, tmp_path / "copy")
    assert not list(tmp_path.glob("*copy*"))


def test_an_entry_that_holds_others_rows_shows_its_hash_alone(
    shop: ShopRecord, tmp_path: Path
) -> None:
    """A table of jobs that was brought in, taken out, and brought in again."""
    with shop.deed("Import jobs.csv") as deed:
        for number in (1, 2):
            car = deed.add(Vehicle, plate=f"SECRET {number}", odometer_unit="mi")
            visit = deed.add(Visit, vehicle_id=car, came_at=NOON.isoformat())
            window = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
            deed.add(Job, number=f"J-{number}", visit_id=visit, **window)
        deed.changes.clear()
        for kept in (Vehicle, Visit, Job):
            deed.remember_added(kept, 1, 2)
    shop.undo()
    shop.redo()
    name_cause(shop, 1, "Belt.")
    made = sealed(shop, 1, tmp_path / "copy")
    assert (made.facts.hash_only, made.facts.shown) == ((2,), 3)
    assert verified(tmp_path / "copy") == (0, WHOLE)
    bodies = map(json.loads, (tmp_path / "copy" / "entries.jsonl").read_text().splitlines())
    assert ["body" in entry for entry in bodies] == [True, False, True, True]
    assert "entry 2 is shown by its hashes alone" in (tmp_path / "copy" / "READ ME.txt").read_text(
        "utf-8"
    )
