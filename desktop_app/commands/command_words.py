"""What each command takes from the command line."""

from __future__ import annotations

import argparse
from typing import Protocol

#: What writes a paper for people speaks the language that is asked for; all others speak English.
PAPERS = ("week", "sheet", "sealed-copy", "card")


class Add(Protocol):
    """Adds a command by its name; what it says stands in the list of commands."""

    def __call__(self, name: str, says: str, *, shop: bool = False) -> argparse.ArgumentParser: ...


def add_commands(add: Add) -> None:
    """Add all commands, in the order in which they are listed."""
    for words in (shop_words, part_words, photo_words, watch_words, record_words, look_up_words):
        words(add)


def shop_words(add: Add) -> None:
    """Say what the commands take that are about a shop itself."""
    one = add("new-shop", "make a new shop in an empty folder or in an empty database of a server")
    one.add_argument("folder", metavar="PLACE")
    one.add_argument("--photos", metavar="FOLDER", help="a shared folder, instead of the database")
    one = add("move-shop", "carry a shop into a new folder or onto a server", shop=True)
    one.add_argument("to", metavar="PLACE")
    one.add_argument("--photos", metavar="FOLDER", help="a shared folder, instead of the database")
    one = add("demo", "fill a folder with the demo shop and open it")
    one.add_argument("folder", metavar="FOLDER", nargs="?")


def part_words(add: Add) -> None:
    """Say what the commands take that are about parts, kinds of parts and gaps."""
    one = add("compare", "judge a removed part against its replacement", shop=True)
    one.add_argument("files", metavar="PAIR.toml", nargs="+")
    one = add("kinds", "show the part kinds, or one of them", shop=True)
    one.add_argument("kind", metavar="KIND", nargs="?")
    one = add("spark", "say what rotor gap and plug gap ask of the coil", shop=True)
    one.add_argument("--rotor-gap-mm", metavar="G")
    one.add_argument("--plug-gap-mm", metavar="P")
    one.add_argument("--compression-ratio", metavar="R")
    one.add_argument("--pressure-kpa", metavar="KPA")
    one.add_argument("--temperature-c", metavar="C")
    one.add_argument("--pair", nargs=2, metavar=("JOB", "PAIRNUMBER"))


def photo_words(add: Add) -> None:
    """Say what the commands take that are about the photo bench."""
    one = add("card", "write a bench card to print, and its layout")
    one.add_argument("--paper", type=str.lower, choices=("a4", "letter"), required=True)
    one.add_argument("--out", metavar="CARD.pdf", required=True)
    one.add_argument("--layout", metavar="CARD.json", required=True)
    one = add(
        "measure",
        "measure in a photo what a file of marks says; length_u_mm and height_u_mm are half the "
        "width of the range that a figure certainly lies in",
    )
    one.add_argument("inputs", metavar="PHOTO MARKS.json", nargs="+")
    one = add("align", "bring the new part's photo onto the old part's")
    one.add_argument("old", metavar="OLD")
    one.add_argument("new", metavar="NEW")
    one.add_argument("--out", metavar="OVERLAY.png")
    one.add_argument("--layout", metavar="CARD.json")
    one.add_argument("--height-mm", metavar="MM")


def watch_words(add: Add) -> None:
    """Say what the commands take that are about returns, the week and the sheet."""
    one = add("returns", "list the visits that came back, not what was told", shop=True)
    one.add_argument("--since", metavar="DATE")
    one.add_argument("--until", metavar="DATE")
    one = add("watch", "list the jobs whose window is open", shop=True)
    one.add_argument("--today", metavar="DATE")
    one = add("rates", "say how often jobs came back, by what they have in common", shop=True)
    by = ("technician", "supplier", "part-kind", "part-origin", "system", "symptom", "verdict")
    one.add_argument("--by", choices=by, required=True)
    one.add_argument("--since", metavar="DATE")
    one.add_argument("--until", metavar="DATE")
    one.add_argument("--today", metavar="DATE")
    one = add("week", "write the week's workbook", shop=True)
    one.add_argument("week", metavar="2026-W47")
    one.add_argument("--out", metavar="WEEK.xlsx", required=True)
    one = add("sheet", "write the comparison sheet of a job", shop=True)
    one.add_argument("job", metavar="JOB")
    one.add_argument("--out", metavar="SHEET.pdf", required=True)
    one = add("sealed-copy", "write the evidence of a job so that any change shows", shop=True)
    one.add_argument("job", metavar="JOB")
    one.add_argument("--out", metavar="FOLDER|FILE.zip", required=True)


def record_words(add: Add) -> None:
    """Say what the commands take that bring records in and out."""
    one = add(
        "import",
        "bring the jobs of a table (CSV or XLSX) into the shop, or a whole export (its FOLDER) "
        "into a new one",
        shop=True,
    )
    one.add_argument("file", metavar="FILE")
    one.add_argument(
        "--columns",
        metavar="MAP.toml",
        help='a map: what the headers don\'t tell (job_number = "RO #" under [columns]), and above '
        'that line what is not read (left_out = ["Total"])',
    )
    one.add_argument("--dry-run", action="store_true", help="only say what it would do")
    one = add(
        "export",
        "write everything into a new folder, readable without this program: tables as CSV, photos, "
        "the history with its hashes; import FOLDER brings all of it back",
        shop=True,
    )
    one.add_argument("folder", metavar="FOLDER")
    one = add("backup", "write the whole shop into a new file, while people work", shop=True)
    one.add_argument("file", metavar="FILE")
    one = add("restore", "bring a shop back from a backup, or from a generation, into a new folder")
    one.add_argument("file", metavar="FILE")
    one.add_argument("folder", metavar="FOLDER")


def look_up_words(add: Add) -> None:
    """Say what the commands take that are about what is looked up, and the check of a shop."""
    one = add("find", "find past jobs by symptom, code, plate, VIN or number", shop=True)
    one.add_argument("text", metavar="TEXT")
    one.add_argument("--limit", type=int, default=20, metavar="N")
    one = add("vin", "say what a VIN tells by itself")
    one.add_argument("vins", metavar="VIN", nargs="+")
    one = add("barcodes", "say which numbers and VINs the barcodes in photos of labels show")
    one.add_argument("labels", metavar="PHOTO", nargs="+")
    one = add("code", "say what a trouble code tells by itself")
    one.add_argument("codes", metavar="CODE", nargs="+")
    one = add(
        "check", "check the shop's record, its history, its photos and its backups", shop=True
    )
    one.add_argument(
        "--mend",
        action="store_true",
        help="make search index and thumbnails anew where they are damaged, bring photos that are "
        "gone or changed back from a backup, and move files that are nobody's into the shop's "
        "folder trash; rows and history are never touched",
    )
    one.add_argument(
        "--anchor",
        metavar="N:HASH",
        help="number and hash as they are printed at the foot of a sheet: does it still hold?",
    )
    one = add(
        "problem-report",
        "show what can be sent when something went wrong: version, settings, log; no customers",
        shop=True,
    )
    one.add_argument("--out", metavar="REPORT.zip", help="write it into a file too")
    one = add(
        "menu-entry",
        "put the program into the menu of this desktop, and let it open a shop's record (Linux)",
    )
    one.add_argument("--remove", action="store_true", help="take it out again")
