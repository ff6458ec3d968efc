"""`compare` and `kinds`: a pair in a file judged, and the part kinds that the program knows."""

from __future__ import annotations

from collections.abc import Mapping
from difflib import get_close_matches
from pathlib import Path

from desktop_app.commands.outcome import Asked, Outcome, one_or_list
from desktop_app.commands.shop_place import kinds_of
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_file import read_pair
from desktop_app.parts_compared.pair_verdict import compare as compare_pair
from desktop_app.parts_compared.part_kinds.kind_page import kind_as_json
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.shop_record.trouble import ShopTrouble


def compare(asked: Asked) -> Outcome:
    """Judge the pair of each file."""
    kinds, tools = _known(asked)
    documents, lines = [], []
    for name in asked.files:
        text = read_text(Path(name))
        try:
            pair = read_pair(text, name, kinds, tools)
            judged = compare_pair(
                pair.kind,
                pair.readings,
                pair.conditions,
                pair.instruments,
                pair.explained,
                pair.limits,
            )
        except OverflowError as error:
            raise ShopTrouble(
                f"{name}: a number in it is too large.", do="Accepted: numbers up to 1,000,000."
            ) from error
        documents.append(judged.as_json())
        lines.append(f"{pair.kind.name}: {judged.verdict}")
        lines.extend(f"  {reason}" for reason in judged.reasons)
        lines.extend(f"  next: {step}" for step in judged.next_steps)
    return Outcome(one_or_list(documents), tuple(lines))


def kinds(asked: Asked) -> Outcome:
    """Show the list of part kinds, or one kind whole."""
    known, _ = _known(asked)
    if asked.kind is None:
        listed = [{"kind": k.id, "name": k.name, "system": k.system} for k in known.values()]
        return Outcome(listed, tuple(f"{k.id:28} {k.name}" for k in known.values()))
    kind = known.get(asked.kind)
    if kind is None:
        said = asked.kind[:60]
        near = get_close_matches(said, known, n=3) or list(known)
        raise ShopTrouble(f"There is no part kind '{said}'.", do=f"Accepted: {', '.join(near)}.")
    lines = [f"{kind.name} ({kind.id}), {kind.system}"]
    for one in kind.dimensions:
        need = "essential" if one.essential else ""
        about = f"{one.label:42} {one.role:12} {one.unit:5} {one.instrument:16} {need}"
        lines.append(f"  {one.name:22} {about}".rstrip())
    lines.extend(f"  seen: {one.term}" for one in kind.conditions)
    lines.extend(f"  caution: {caution}" for caution in kind.cautions)
    return Outcome(kind_as_json(kind), tuple(lines))


def _known(asked: Asked) -> tuple[dict[str, PartKind], Mapping[str, Instrument]]:
    """Return the kinds and the instruments: the program's, and those of a shop that was named."""
    if not asked.shop:
        return kinds_of(), {}
    from desktop_app.commands.opened_shop import shop_of
    from desktop_app.parts_compared.stored_pairs import drawer

    with shop_of(asked) as record:
        with record.reading() as connection:
            tools = drawer(connection)
        return kinds_of(record), tools


def read_text(path: Path) -> str:
    """Return the text of a file that the user named; a ShopTrouble says why it can't be read."""
    try:
        if path.exists() and not path.is_file():
            what = "a folder" if path.is_dir() else "a device or a pipe"
            raise ShopTrouble(f"{path} is {what}.", do="Accepted: a file such as PAIR.toml.")
        if path.stat().st_size > 1_000_000:
            raise ShopTrouble(f"{path} is larger than 1 MB.", do="Accepted: a small text file.")
        return path.read_text("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ShopTrouble(
            f"{path} is not a UTF-8 text file.", do="Accepted: a file such as PAIR.toml."
        ) from error
    except OSError as error:
        raise ShopTrouble(
            f"{path} cannot be read: {error.strerror}.", do="Accepted: a file such as PAIR.toml."
        ) from error
