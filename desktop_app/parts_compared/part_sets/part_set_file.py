"""A part-set file: its TOML text read into a PartSet, or refused with the line to mend."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_shelf import Folder
from desktop_app.parts_compared.part_kinds.kind_table import KindTable, Say, as_written, toml_table
from desktop_app.parts_compared.part_kinds.part_kind import COMMON_PRACTICE
from desktop_app.parts_compared.part_sets.part_set import (
    ENTERS,
    TERM_SIDES,
    GivenTerm,
    PartSet,
    PartTerm,
)

UNITS = ("mm",)


def load_sets(folder: Folder) -> tuple[PartSet, ...]:
    """Read every *.toml of a folder, in the order of the file names. Raises KindTrouble."""
    files = [one for one in folder.iterdir() if one.name.endswith(".toml")]
    files.sort(key=lambda one: one.name)
    return tuple(read_set(one.read_bytes().decode("utf-8-sig"), one.name, tr) for one in files)


def read_set(text: str, file: str, say: Say = as_written) -> PartSet:
    """Return the set written in `text`; `file` is only named in messages.

    `say` gives the words for what is meant for people.
    Keys that are not known are left alone. Raises KindTrouble.
    """
    table = toml_table(text, file, say)
    given = _given_terms(table)
    return PartSet(
        id=table.identifier("id", "rotor-and-cap"),
        name=table.said("name"),
        result=table.said("result"),
        unit=table.choice("unit", UNITS),
        parts=_part_terms(table),
        given=given,
        at_least=table.number("at_least") or 0.0,
        say_room=table.said("say_room"),
        say_touch=table.said("say_touch"),
        say_run_out=_run_out(table),
        at_most_given=_at_most(table, given),
        honest=table.said("honest", ""),
        cautions=table.said_words("cautions"),
    )


def _at_most(table: KindTable, given: tuple[GivenTerm, ...]) -> str:
    name = table.word("at_most_given", "")
    names = [one.name for one in given]
    if name and name not in names:
        accepted = (
            tr("Write one of: {names}.", names=", ".join(names))
            if names
            else tr("Add a [[given]] table first.")
        )
        raise table.trouble(
            "at_most_given", tr("is '{name}', which is not given here", name=name), accepted
        )
    return name


def _run_out(table: KindTable) -> str:
    needed = bool(table.word("at_most_given", ""))
    return table.said("say_run_out", None if needed else "")


def _part_terms(table: KindTable) -> tuple[PartTerm, ...]:
    terms = tuple(_part_term(one) for one in table.tables("parts"))
    if not terms:
        raise table.trouble("parts", tr("is missing"), tr("Add at least one [[parts]] table."))
    return terms


def _part_term(table: KindTable) -> PartTerm:
    value = table.number("value")
    half_width = _half_width(table, needed=value is not None)
    return PartTerm(
        kind=table.identifier("kind", "rotor-and-cap"),
        dimension=table.identifier("dimension", "rotor-and-cap"),
        times=_times(table, may_be_nothing=False),
        side=table.choice("side", TERM_SIDES) if "side" in table.values else "own",
        value=value,
        half_width=half_width,
        each_of=table.word("each_of", ""),
        place=table.said("place", "place"),
    )


def _given_terms(table: KindTable) -> tuple[GivenTerm, ...]:
    terms: dict[str, GivenTerm] = {}
    for one in table.tables("given"):
        term = _given_term(one)
        if term.name in terms:
            raise one.trouble(
                "name", tr("'{name}' is used twice", name=term.name), tr("Give each its own name.")
            )
        terms[term.name] = term
    return tuple(terms.values())


def _given_term(table: KindTable) -> GivenTerm:
    enters = table.choice("enters", ENTERS)
    value = table.number("value")
    if enters == "play" and value is None:
        raise table.trouble(
            "value", tr("is missing"), tr("Play needs a middle: write value = 0, for example.")
        )
    return GivenTerm(
        name=table.identifier("name", "rotor-and-cap"),
        label=table.said("label"),
        times=_times(table, may_be_nothing=True),
        half_width=_half_width(table, needed=True),
        enters=enters,
        value=value,
        cancels=table.flag("cancels"),
        basis=table.said("basis", COMMON_PRACTICE),
        how=table.said("how", ""),
    )


def _times(table: KindTable, *, may_be_nothing: bool) -> float:
    times = table.number("times")
    if times is None or (times == 0 and not may_be_nothing):
        raise table.trouble(
            "times",
            tr("must say how often it counts, with its sign"),
            tr("Write times = 1 for what gives room, times = -1 for what takes it."),
        )
    return times


def _half_width(table: KindTable, *, needed: bool) -> float:
    half_width = table.number("half_width")
    if half_width is None and not needed:
        return 0.0
    if half_width is None or half_width < 0:
        raise table.trouble(
            "half_width",
            tr("must say how far it may be off either way"),
            tr("Write half_width = 0.10, for example."),
        )
    return half_width
