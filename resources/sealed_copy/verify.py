"""Says in one line whether a sealed copy is whole. Needs Python 3.8 or newer, and nothing else.

python3 verify.py [FOLDER [NUMBER HASH]]     FOLDER is the copy; NUMBER and HASH are those of an
anchor, of the words “history 4211, 1f2e3d4c5b6a7988” on a printed sheet or workbook.
"""

import hashlib
import json
import pathlib
import sys

LEFT_BY_SYSTEMS = {".DS_Store", "desktop.ini", "Thumbs.db"}


def sha256(content):
    return hashlib.sha256(content).hexdigest()


def wrong_entry(lines, manifest, anchor):
    number, chained = manifest["first"] - 1, manifest["hash_before"]
    for line in lines:
        number += 1
        try:
            entry = json.loads(line)
            inner = sha256(b"\0" + entry["body"].encode()) if "body" in entry else entry["inner"]
            begin = b"\1" + bytes.fromhex(chained) + str(number).encode()
            chained = sha256(begin + bytes.fromhex(inner))
            held = (entry["number"], entry["hash"]) == (number, chained)
        except (ValueError, TypeError, KeyError, AttributeError):
            held = False
        if not held:
            return f"entry {number} is not as it was written"
        for photo in manifest["photos"]:
            if photo["entry"] == number and photo["sha256"] not in entry.get("body", ""):
                return f"{photo['file']} is not the photo that entry {number} names"
        if anchor and int(anchor[0]) == number and not chained.startswith(anchor[1].lower()):
            return f"entry {number} is another one than the anchor says"
    if {"number": number, "hash": chained} != manifest["head"]:
        return f"the entries after {number} are missing"
    if anchor and not manifest["first"] <= int(anchor[0]) <= number:
        return f"the anchor is of no entry from {manifest['first']} to {number}"


def what_is_wrong(folder, anchor):
    sealed = (folder / "manifest.json").read_bytes()
    if (folder / "seal.txt").read_bytes() != f"{sha256(sealed)}\n".encode():
        return "manifest.json is not as it was sealed, or seal.txt was changed"
    manifest = json.loads(sealed)
    lines = (folder / "entries.jsonl").read_bytes().splitlines()
    if wrong := wrong_entry(lines, manifest, anchor):
        return wrong
    there = {one.relative_to(folder).as_posix() for one in folder.rglob("*") if one.is_file()}
    for name, wanted in sorted(manifest["files"].items()):
        if name not in there or sha256((folder / name).read_bytes()) != wanted:
            return f"{name} is missing or not as it was sealed"
    for name in sorted(there - {*manifest["files"], "manifest.json", "seal.txt"}):
        if name.rpartition("/")[2] not in LEFT_BY_SYSTEMS:
            return f"{name} does not belong to the copy"


if __name__ == "__main__":
    place = pathlib.Path(sys.argv[1] if sys.argv[1:] else __file__)
    try:
        found = what_is_wrong(place if place.is_dir() else place.parent, sys.argv[2:4])
    except (OSError, ValueError, TypeError, KeyError, IndexError, AttributeError) as error:
        found = f"it cannot be read ({type(error).__name__}: {error})"
    print(f"NOT WHOLE: {found}." if found else "Whole: every file, and the chain of all entries.")
    sys.exit(1 if found else 0)
