"""What can be done, set and typed stands in `resources/reference.md`, as the program has it.

After a wanted change: `BENCHWITNESS_WRITE_GOLDEN=1 pytest tests/test_documents.py`, then read the
difference. Columns of the weekly book are held to its own last sheet, by
`tests/weekly_report/test_definitions.py`.
"""

from __future__ import annotations

import argparse
import configparser
import inspect
import os
import re
from collections.abc import Callable, Iterator
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest

from demo_shop.pictures_marked import MARKED, Part
from desktop_app.commands.command_words import add_commands
from desktop_app.shop_record.house_rules import RuleSaid, all_rules
from tests.undo_machine.test_all_deeds_are_done import deeds_done

ROOT = Path(__file__).resolve().parent.parent
REFERENCE = ROOT / "resources" / "reference.md"
WRITE = os.environ.get("BENCHWITNESS_WRITE_GOLDEN") == "1"
HEAD = """# Deeds, house rules, commands

Written from the program itself; a test fails where the two differ.
"""


def deeds() -> list[Callable[..., Any]]:
    """Every deed, room by room."""
    named = (name.rpartition(".") for name in sorted(deeds_done()))
    return [getattr(import_module(f"desktop_app.{place}"), name) for place, _, name in named]


def first_sentence(deed: Callable[..., Any]) -> str:
    """What a deed does, in the first paragraph of its docstring."""
    return " ".join((inspect.getdoc(deed) or "").split("\n\n", maxsplit=1)[0].split())


def commands() -> dict[str, tuple[str, argparse.ArgumentParser]]:
    """Every command by its name, with what it says and what it takes."""
    found: dict[str, tuple[str, argparse.ArgumentParser]] = {}

    def add(name: str, says: str, *, shop: bool = False) -> argparse.ArgumentParser:
        parser = argparse.ArgumentParser(name, add_help=False)
        if shop:
            parser.add_argument("--shop", metavar="PLACE")
        found[name] = (says, parser)
        return parser

    add_commands(add)
    return found


def usage(parser: argparse.ArgumentParser) -> str:
    """How a command is typed."""
    return " ".join(parser.format_usage().removeprefix("usage: ").split())


def accepted(rule: RuleSaid) -> str:
    """What a rule accepts."""
    if rule.allowed:
        return " or ".join(str(one) for one in rule.allowed)
    if rule.bounds:
        return f"{rule.bounds[0]:,} to {rule.bounds[1]:,}"
    return "a text"


def reference() -> Iterator[str]:
    """The whole document, line by line."""
    yield HEAD
    yield "## Deeds\n\nEach is one entry of the history, and undo takes it back."
    room = ""
    for deed in deeds():
        place = deed.__module__.split(".")[1]
        if place != room:
            room = place
            yield f"\n### {room}\n\n| deed | what it does |\n|---|---|"
        file = deed.__module__.rpartition(".")[2]
        yield f"| `{file}.{deed.__name__}` | {first_sentence(deed)} |"
    yield "\n## House rules\n\n| rule | at first | accepted | what it does |\n|---|---|---|---|"
    for rule in all_rules():
        yield f"| {rule.name} | {rule.default} | {accepted(rule)} | {rule.says} |"
    yield "\n## Commands\n\n| typed | what it does |\n|---|---|"
    for says, parser in commands().values():
        yield f"| `{usage(parser).replace('|', ' or ')}` | {says} |"


def test_the_reference_is_as_the_program_is() -> None:
    text = "\n".join(reference()) + "\n"
    if WRITE:
        REFERENCE.write_text(text, encoding="utf-8")
    assert REFERENCE.read_text(encoding="utf-8") == text


@pytest.mark.parametrize("deed", deeds(), ids=lambda deed: deed.__name__)
def test_every_deed_says_what_it_does(deed: Callable[..., Any]) -> None:
    assert re.fullmatch(r"[A-Z].{12,}", first_sentence(deed))


def test_every_rule_says_what_it_does() -> None:
    assert [rule.name for rule in all_rules() if len(rule.says.split()) < 3] == []


def test_every_command_stands_in_the_readme() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    rows = "\n".join(line for line in readme.splitlines() if line.startswith("| `"))
    named = set(re.findall(r"`([a-z-]+)[ `]", rows))
    assert commands().keys() - named == set()


def developers() -> str:
    """What DEVELOPERS.md says."""
    return (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_every_room_stands_in_the_tree_of_the_developers() -> None:
    rooms = [path.name for path in (ROOT / "desktop_app").iterdir() if path.is_dir()]
    assert [room for room in rooms if room[0].isalpha() and room not in developers()] == []


def layers(contract: str) -> list[list[str]]:
    """The lines of a contract about layers, each with the modules that stand in it."""
    contracts = configparser.ConfigParser()
    contracts.read(ROOT / ".importlinter", encoding="utf-8")
    lines = contracts[f"importlinter:contract:{contract}"]["layers"].strip().splitlines()
    return [re.findall(r"\w+", line) for line in lines]


def drawn() -> list[list[str]]:
    """The words of the drawing of the layers, line by line."""
    [drawing] = [one for one in developers().split("```") if " all speak " in one]
    return [re.findall(r"\w+", line) for line in drawing.splitlines()]


@pytest.mark.parametrize("contract", ["between-folders", "inside-folders"])
def test_the_layers_are_drawn_as_the_contract_has_them(contract: str) -> None:
    wanted = layers(contract)
    named = {name for line in wanted for name in line}
    found = [[word for word in line if word in named] for line in drawn()]
    assert [line for line in found if line] == wanted


def test_nothing_is_drawn_that_no_contract_has() -> None:
    modules = {name for line in layers("between-folders") for name in line}
    names = {word for line in drawn() for word in line if "_" in word}
    assert names - modules == set()


@pytest.mark.parametrize("picture", MARKED)
def test_each_number_on_a_picture_stands_beside_its_file(picture: str) -> None:
    below = developers().partition(f"{picture}-light.png")[2].partition("\n|---|---|---|\n")[2]
    rows = re.findall(r"\| (\d+) \|.*\| `(\S+)` \|\n", below.partition("\n\n")[0] + "\n")
    assert rows == [(str(n), part.file) for n, part in enumerate(MARKED[picture], start=1)]


@pytest.mark.parametrize("part", [part for parts in MARKED.values() for part in parts])
def test_the_file_names_the_part_that_is_numbered(part: Part) -> None:
    made = (ROOT / "desktop_app" / part.file).read_text(encoding="utf-8")
    assert re.search(rf"\b{part.widget}\(", made)


def test_every_file_that_is_named_is_there() -> None:
    folders = ("desktop_app", "demo_shop", "resources", "tests")
    there = [file.as_posix() for one in folders for file in (ROOT / one).rglob("*.*")]
    named = set(re.findall(r"`([\w/]+\.(?:py|toml|html))`", developers())) - {"run.py"}
    assert [one for one in named if not any(file.endswith(f"/{one}") for file in there)] == []
