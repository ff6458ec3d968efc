"""What a set says: whether there is room, how it changed, and what was not measured."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_sets.part_set import PartSet
from desktop_app.parts_compared.part_sets.set_room import SetRoom, Share
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison
from desktop_app.parts_compared.shown_value import amount, doubt, number

# One sign for each verdict on a set; the words always stand beside it.
SET_SIGNS = {
    "room enough": "▣",
    "may touch": "☞",
    "may run out": "☞",
    "too close to tell": "≈",
    "not measured": "◌",
}


def main_sentence(judged: SetComparison, length_unit: str = "mm") -> str:
    """Return the one sentence that stands beside the verdict."""
    part_set, room = judged.part_set, judged.after
    if room is None:
        return f"The {part_set.result} is not known yet."
    unit, factor = shop_unit(part_set.unit, length_unit)
    if judged.verdict == "room enough":
        least = (room.lowest - part_set.at_least) * factor
        left = amount(least, unit, min(least, room.usual * factor))
        return f"At the worst {left} is left. {part_set.say_room}"
    if judged.verdict == "may touch":
        return f"{_room(judged, room, length_unit)} {_touching(part_set, room)}"
    if judged.verdict == "may run out":
        return f"{_room(judged, room, length_unit)} {part_set.say_run_out}"
    if judged.verdict == "not measured":
        left = amount((room.lowest - part_set.at_least) * factor, unit, room.usual * factor)
        missing = f"the {_limit_label(part_set)} is not entered"
        return f"At the worst {left} is left, but the other end can't be judged: {missing}."
    return (
        f"{_room(judged, room, length_unit)} Whether that is room enough, "
        "these readings can't tell."
    )


def set_sentences(judged: SetComparison, length_unit: str = "mm") -> tuple[str, ...]:
    """Return everything there is to say, the verdict's sentence first."""
    return tuple(_sentences(judged, length_unit))


def room_words(room: SetRoom, unit: str, factor: float = 1.0) -> str:
    """Return a room with its usual case and its worst, like "0.95 mm (usually ± 0.14, ...)"."""
    value = amount(room.value * factor, unit, room.usual * factor)
    if room.worst <= 0:
        return value
    usual = number(room.usual * factor, room.usual * factor)
    low, high = (number(end * factor, room.usual * factor) for end in (room.lowest, room.highest))
    return f"{value} (usually ± {usual}; at the worst from {low} to {high})"


def _sentences(judged: SetComparison, length_unit: str) -> Iterator[str]:
    part_set = judged.part_set
    yield main_sentence(judged, length_unit)
    unit, factor = shop_unit(part_set.unit, length_unit)
    if judged.verdict in ("room enough", "not measured") and judged.after is not None:
        yield _room(judged, judged.after, length_unit)
    if judged.before is not None:
        yield f"With the old parts it was {room_words(judged.before, unit, factor)}."
    yield from _change(judged, unit, factor)
    if judged.taken:
        listed = "; ".join(_share(one, unit, factor) for one in judged.taken)
        yield f"Not measured, but taken as usual: {listed}."
    unseen = part_set.at_most_given and judged.at_most is None and judged.after is not None
    if unseen and judged.verdict != "not measured":
        yield f"The other end was not looked at: the {_limit_label(part_set)} is not entered."
    if part_set.honest:
        yield part_set.honest


def _touching(part_set: PartSet, room: SetRoom) -> str:
    """Say what a room means that can reach nothing: proof only where nothing was just taken."""
    if not room.taken:
        return f"It can reach nothing. {part_set.say_touch}"
    if room.value - part_set.at_least + room.doubt <= 0:
        return "Nothing is left even without play: check that each of these parts is right."
    usual = [one for one in room.taken if one.moves]
    first = "Measure the play first" if usual else "Measure first what was taken as usual"
    return f"Play may use that up. {first}, and check that each of these parts is right."


def _limit_label(part_set: PartSet) -> str:
    term = part_set.given_term(part_set.at_most_given)
    return part_set.at_most_given if term is None else term.label


def _room(judged: SetComparison, room: SetRoom, length_unit: str) -> str:
    unit, factor = shop_unit(judged.part_set.unit, length_unit)
    at = f" at {room.place}, the tightest," if room.place else ""
    said = room_words(room, unit, factor)
    return f"With the new parts the {judged.part_set.result}{at} is {said}."


def _change(judged: SetComparison, unit: str, factor: float) -> Iterator[str]:
    if judged.change is None:
        return
    change, expanded = judged.change.value * factor, judged.change.expanded() * factor
    result = judged.part_set.result
    if abs(change) <= expanded:
        most = amount(abs(change) + expanded, unit, expanded)
        yield f"From the old parts to the new ones the {result} changed by less than {most}."
        return
    way = "larger" if change > 0 else "smaller"
    yield (
        f"From the old parts to the new ones the {result} became "
        f"{amount(abs(change), unit, expanded)} {way}{doubt(expanded)}. "
        "What is the same before and after cancels in that."
    )


def _share(one: Share, unit: str, factor: float) -> str:
    value, half_width = one.value * factor, one.half_width * factor
    figures = f"± {amount(half_width, unit, half_width)}"
    return f"{one.label} ({number(value)} {figures})" if value else f"{one.label} ({figures})"
