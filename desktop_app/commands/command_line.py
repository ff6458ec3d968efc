"""The command line: which words are understood, and how an outcome or a refusal is said."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

from desktop_app.commands.command_words import add_commands
from desktop_app.commands.handed_over import handed_over, is_out_of_an_archive, out_of_an_archive
from desktop_app.commands.json_pieces import json_pieces
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble

if TYPE_CHECKING:
    from desktop_app.commands.outcome import Command, Outcome

# Opens the window on a shop (None: the last one), with what is to be said first, and returns the
# exit status when it is closed.
OpenWindow = Callable[..., int]
# Draws the window off screen into a PNG.
DrawWindow = Callable[[Path, Path], None]
# Speaks the language in which a command writes, before what it needs is loaded.
Speak = Callable[[str], None]

_PROGRAM = "benchwitness"
#: What names a place: how it is called, and what is accepted there.
PLACES = {
    "folder": ("PLACE", "a new or an empty folder, or the address of a database"),
    "file": ("FILE", "the name of a file or a folder"),
    "files": ("A file's name", "files such as PAIR.toml"),
    "columns": ("--columns", "the name of a map, such as MAP.toml"),
    "to": ("PLACE", "a new or an empty folder, or the address of a database"),
    "photos": ("--photos", "a folder that all computers of the shop reach"),
    "shop": ("--shop", "the folder of a shop, or its address on a server"),
    "out": ("--out", "the name of the file to write"),
    "layout": ("--layout", "the name of a card's layout, such as CARD.json"),
}


class _Parser(argparse.ArgumentParser):
    """Says what is wrong in exactly one line."""

    def error(self, message: str) -> NoReturn:
        raise ShopTrouble(f"{self.prog}: {message}.", do=f"See {self.prog} --help.")


def run(
    argv: Sequence[str],
    open_window: OpenWindow,
    draw_window: DrawWindow,
    speak: Speak = lambda _command: None,
) -> int:
    """Carry out a command line and return the exit status: 0 done, 1 damage found, 2 refused."""
    try:
        _check_words(argv)
        handed = handed_over(argv)
        if handed is not None:
            return _open_handed(handed, open_window)
        asked = _asked(argv)
        _check_options(asked)
        if asked.command is None:
            from desktop_app.commands.shop_place import chosen_place

            return open_window(chosen_place(asked.shop) if asked.shop else None)
        speak(asked.command)
        with _said_of(asked.command):
            if asked.command == "demo":
                from desktop_app.commands.demo import demo

                return demo(asked, open_window, draw_window)
            outcome = _command(asked.command)(asked)
        say(outcome, as_json=asked.json)
    except ShopTrouble as trouble:
        return _refused(trouble.sentence())
    except BrokenPipeError:
        # Who read from us went away; Python would say so once more at its end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:
        return _refused(f"{str(error.filename or 'The output')[:200]}: {error.strerror}.")
    except KeyboardInterrupt:
        return 130
    return outcome.status


def _open_handed(path: Path, open_window: OpenWindow) -> int:
    """Open the shop of a record, or of a folder; who pressed a file sees the window alone."""
    if is_out_of_an_archive(path):
        return open_window(None, out_of_an_archive)
    return open_window(path if path.is_dir() else path.parent)


@contextmanager
def _said_of(command: str) -> Iterator[None]:
    """Say what could not be saved of the command: nobody typed it into a field of the window."""
    try:
        yield
    except NotSaved as trouble:
        broken_off = f"“{command}” was broken off; nothing more was written."
        raise ShopTrouble(
            trouble.what, broken_off if trouble.kept else "", trouble.again
        ) from trouble


def _refused(sentence: str) -> int:
    """Say why in exactly one line, whatever a file may be called."""
    line = " ".join(sentence.split())
    shown = (c if c.isprintable() else c.encode("unicode_escape").decode() for c in line)
    print("".join(shown), file=sys.stderr)
    return 2


class _SayVersion(argparse.Action):
    """Says the version; looked up only when it is asked for, because that takes a while."""

    def __call__(self, parser: argparse.ArgumentParser, *_asked: object) -> None:
        from desktop_app.shop_record.own_program.own_version import made_by

        print(made_by())
        parser.exit()


def _check_words(argv: Sequence[str]) -> None:
    """Refuse words that are no text: bytes that aren't UTF-8, or a NUL."""
    for word in argv:
        if "\0" in word or any("\udc80" <= letter <= "\udcff" for letter in word):
            shown = word.encode("ascii", "backslashreplace").decode()[:60]
            raise ShopTrouble(f"“{shown}” is not text.", do="Accepted: words in UTF-8.")


def _check_options(asked: argparse.Namespace) -> None:
    """Refuse `--out=--`, of which argparse makes an empty list, and empty names of places."""
    for name, value in vars(asked).items():
        if value == []:
            option = f"--{name.replace('_', '-')}"
            raise ShopTrouble(f"{option}: “--” is no value.", do=f"Say one behind {option}.")
        said = [value] if isinstance(value, str) else value or ()
        if name in PLACES and not all(map(str.strip, said)):
            called, accepted = PLACES[name]
            raise ShopTrouble(f"{called} is empty.", do=f"Accepted: {accepted}.")


def say(outcome: Outcome, *, as_json: bool) -> None:
    """Print the outcome: one JSON document and nothing else, or lines for a person.

    What the output's encoding has no letters for is escaped; without an output nothing is said.
    """
    out = sys.stdout
    if out is None:
        return
    any_letter = (out.encoding or "").lower().replace("-", "") == "utf8"
    if as_json:
        pieces = json_pieces(outcome.json, only_ascii=not any_letter)
    else:
        pieces = (f"{line}\n" for line in outcome.lines)
    for piece in pieces:
        if not any_letter:
            encoding = out.encoding or "ascii"
            piece = piece.encode(encoding, "backslashreplace").decode(encoding)
        out.write(piece)
    out.flush()


def _asked(argv: Sequence[str]) -> argparse.Namespace:
    """Return what was asked; where that is the window alone no command is prepared."""
    window = _Parser(prog=_PROGRAM, add_help=False, allow_abbrev=False)
    _add_shop(window)
    window.set_defaults(command=None)
    asked, more = window.parse_known_args(argv)
    return _parser().parse_args(argv) if more else asked


def _add_shop(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--shop", metavar="PLACE", help="the shop to open: a folder or an address")


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog=_PROGRAM,
        description="Keeps the evidence that a replaced part was the right one, and watches "
        "whether the car comes back. Without a command the window opens on the last shop.",
    )
    parser.add_argument("--version", action=_SayVersion, nargs=0, help="say the version")
    _add_shop(parser)
    parser.set_defaults(json=False)
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", parser_class=_Parser)

    def add(name: str, says: str, *, shop: bool = False) -> _Parser:
        one: _Parser = commands.add_parser(name, help=says, description=says)
        one.add_argument("--json", action="store_true", help="print one JSON document")
        if shop:
            # The main parser has --shop too; a default here would wipe out what it read.
            one.add_argument("--shop", metavar="PLACE", default=argparse.SUPPRESS)
        return one

    add_commands(add)
    return parser


def _command(name: str) -> Command:
    """Return what carries a command out; each is loaded only when it is asked for."""
    if name in ("new-shop", "move-shop"):
        from desktop_app.commands import shops

        command = shops.new_shop if name == "new-shop" else shops.move_shop
    elif name in ("compare", "kinds"):
        from desktop_app.commands import parts

        command = parts.compare if name == "compare" else parts.kinds
    elif name == "spark":
        from desktop_app.commands.spark import spark as command
    elif name == "card":
        from desktop_app.commands.bench_card import card as command
    elif name == "measure":
        from desktop_app.commands.photo_measures import measure as command
    elif name == "align":
        from desktop_app.commands.photo_overlay import align as command
    elif name in ("returns", "watch"):
        from desktop_app.commands import watching

        command = watching.returns if name == "returns" else watching.watch
    elif name == "rates":
        from desktop_app.commands.rates import rates as command
    elif name in ("week", "sheet"):
        from desktop_app.commands import reports

        command = reports.week if name == "week" else reports.sheet
    elif name == "sealed-copy":
        from desktop_app.commands.sealing import sealed_copy as command
    elif name == "barcodes":
        from desktop_app.commands.barcodes import barcodes as command
    elif name in ("vin", "code"):
        from desktop_app.commands import vehicle_codes

        command = vehicle_codes.vin if name == "vin" else vehicle_codes.code
    elif name == "find":
        from desktop_app.commands.finding import find as command
    elif name == "import":
        from desktop_app.commands.bringing_back import import_any as command
    elif name == "export":
        from desktop_app.commands.exporting import export as command
    elif name in ("backup", "restore"):
        from desktop_app.commands import backing_up

        command = backing_up.backup if name == "backup" else backing_up.restore
    elif name == "problem-report":
        from desktop_app.commands.problem_report import problem_report as command
    elif name == "menu-entry":
        from desktop_app.commands.menu_entry import menu_entry as command
    else:
        from desktop_app.commands.checking import check as command
    return command
