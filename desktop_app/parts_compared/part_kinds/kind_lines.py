"""The lists of a part kind as lines of text, one entry a line, with marks for what matters."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from difflib import SequenceMatcher
from typing import Literal, TypeAlias, TypeVar

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import (
    ConditionTerm,
    PartKind,
    ProofCheck,
    RefitCheck,
    TypicalWrong,
)
from desktop_app.shop_record.trouble import ShopTrouble

Part: TypeAlias = Literal["cautions", "conditions", "refit", "proof", "wrongs"]
HURTS = "⚠ "
NEW_ONE_MAY = tr(" (new one may)")
LONGEST_LINE = 480  # letters
ALIKE = 0.6  # from here on a line is the old one reworded (a choice, no source)

_HURTS = re.compile(r"^(?:⚠\ufe0f?|!)\s*")
# As the language spoken has it, and in English as well: lines may come from elsewhere.
_ENDINGS = "|".join(re.escape(one.strip()) for one in ("(new one may)", NEW_ONE_MAY))
_NEW_ONE_MAY = re.compile(rf"\s*(?:{_ENDINGS})$", re.IGNORECASE)
T = TypeVar("T")


def typed_lines(text: str) -> tuple[str, ...]:
    """Return the lines of a text that say something, each once."""
    return tuple(dict.fromkeys(line.strip() for line in text.splitlines() if line.strip()))


def lines_of(kind: PartKind, part: Part) -> tuple[str, ...]:
    """Return a list of the kind as a field shows it, with its marks."""
    if part == "cautions":
        return kind.cautions
    if part == "conditions":
        return tuple(
            tr(one.term) + (NEW_ONE_MAY if one.allowed_when_new else "") for one in kind.conditions
        )
    if part == "refit":
        return tuple((HURTS if one.hurt else "") + tr(one.say) for one in kind.refit)
    if part == "proof":
        return tuple(tr(one.say) for one in kind.proof)
    return tuple(one.say for one in kind.wrongs)


def with_lines(kind: PartKind, part: Part, text: str) -> PartKind:
    """Return the kind with one of its lists as typed, one entry a line.

    What can injure begins with ⚠ or an exclamation mark, and "(new one may)" ends what a fresh
    part may show. Everything else that goes with an entry (other names, what it means, what wear
    moves, where it is proved) stays with its line, also when the line is reworded.
    """
    lines = typed_lines(text)
    if any(len(line) > LONGEST_LINE for line in lines):
        raise ShopTrouble(
            tr("A line is too long: {longest_line} letters at most.", longest_line=LONGEST_LINE)
        )
    if part == "cautions":
        return kind._replace(cautions=lines)
    if part == "conditions":
        fresh = _marked(lines, _NEW_ONE_MAY)
        terms = _kept_with(kind.conditions, lambda one: tr(one.term), tuple(fresh), ConditionTerm)
        return kind._replace(
            conditions=tuple(
                one._replace(term=one.term if said == tr(one.term) else said, allowed_when_new=may)
                for one, (said, may) in zip(terms, fresh.items(), strict=True)
            ),
        )
    if part == "refit":
        hurts = _marked(lines, _HURTS)
        written = {tr(one.say): one.say for one in kind.refit}
        checks = tuple(RefitCheck(written.get(said, said), hurt) for said, hurt in hurts.items())
        return kind._replace(refit=checks)
    if part == "proof":
        proofs = _kept_with(kind.proof, lambda one: tr(one.say), lines, ProofCheck)
        said_proofs = zip(proofs, lines, strict=True)
        return kind._replace(
            proof=tuple(
                one._replace(say=one.say if said == tr(one.say) else said)
                for one, said in said_proofs
            ),
        )
    wrongs = _kept_with(kind.wrongs, lambda one: one.say, lines, TypicalWrong)
    said_wrongs = zip(wrongs, lines, strict=True)
    return kind._replace(wrongs=tuple(one._replace(say=said) for one, said in said_wrongs))


def both_changes(shown: Sequence[str], typed: Sequence[str], kept: Sequence[str]) -> list[str]:
    """Return the typed lines together with what another desk changed since they were shown.

    A line that it took out goes, a line that it wrote comes in after the one it stands behind.
    """
    gone = [line for line in shown if line not in kept]
    lines = [line for line in typed if line not in gone]
    for place, line in enumerate(kept):
        if line in shown or line in lines:
            continue
        before = next((one for one in reversed(kept[:place]) if one in lines), None)
        lines.insert(0 if before is None else lines.index(before) + 1, line)
    return lines


def _marked(lines: Sequence[str], mark: re.Pattern[str]) -> dict[str, bool]:
    """Return each line without its mark, and whether it had one."""
    found: dict[str, bool] = {}
    for line in lines:
        bare = mark.sub("", line).strip()
        if bare:
            found[bare] = found.get(bare, False) or bare != line
    return found


def _kept_with(
    old: Sequence[T], words: Callable[[T], str], lines: Sequence[str], make: Callable[[str], T]
) -> list[T]:
    """Return for each line the old entry that it continues, or a new one.

    That is the entry with these words, else the one most alike, else the one that stood in its
    place where as many lines were taken out there as were written.
    """
    before = [words(one) for one in old]
    found = {line: before.index(line) for line in lines if line in before}
    free = [place for place, said in enumerate(before) if said not in lines]
    new = [line for line in lines if line not in found]
    alike = [
        (SequenceMatcher(None, before[place], line).ratio(), place, line)
        for place in free
        for line in new
    ]
    for ratio, place, line in sorted(alike, key=lambda one: -one[0]):
        if ratio > ALIKE and place in free and line not in found:
            found[line] = place
            free.remove(place)
    for tag, i, end, j, last in SequenceMatcher(None, before, list(lines)).get_opcodes():
        if tag == "replace" and end - i == last - j:
            for place, line in zip(range(i, end), lines[j:last], strict=True):
                if place in free and line not in found:
                    found[line] = place
    return [old[found[line]] if line in found else make(line) for line in lines]
