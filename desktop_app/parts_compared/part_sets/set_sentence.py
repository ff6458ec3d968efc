"""What a set says: whether there is room, how it changed, and what was not measured."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import marked, tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_sets.part_set import PartSet
from desktop_app.parts_compared.part_sets.set_room import SetRoom, Share
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison
from desktop_app.parts_compared.shown_value import amount, doubt, number

# One sign for each verdict on a set; the words always stand beside it.
SET_SIGNS = {
    marked("room enough"): "▣",
    marked("may touch"): "☞",
    marked("may run out"): "☞",
    marked("too close to tell"): "≈",
    marked("not measured"): "◌",
}


def main_sentence(judged: SetComparison, length_unit: str = "mm") -> str:
    """Return the one sentence that stands beside the verdict."""
    part_set, room = judged.part_set, judged.after
    if room is None:
        return tr("The {result} is not known yet.", result=part_set.result)
    unit, factor = shop_unit(part_set.unit, length_unit)
    if judged.verdict == "room enough":
        least = (room.lowest - part_set.at_least) * factor
        left = amount(least, unit, min(least, room.usual * factor))
        return tr("At the worst {left} is left. {say_room}", left=left, say_room=part_set.say_room)
    if judged.verdict == "may touch":
        return f"{_room(judged, room, length_unit)} {_touching(part_set, room)}"
    if judged.verdict == "may run out":
        return f"{_room(judged, room, length_unit)} {part_set.say_run_out}"
    if judged.verdict == "not measured":
        left = amount((room.lowest - part_set.at_least) * factor, unit, room.usual * factor)
        return tr(
            "At the worst {left} is left, but the other end can't be judged: "
            "the {limit_label} is not entered.",
            left=left,
            limit_label=_limit_label(part_set),
        )
    return tr(
        "{room} Whether that is room enough, these readings can't tell.",
        room=_room(judged, room, length_unit),
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
    return tr(
        "{value} (usually ± {usual}; at the worst from {low} to {high})",
        value=value,
        usual=usual,
        low=low,
        high=high,
    )


def _sentences(judged: SetComparison, length_unit: str) -> Iterator[str]:
    part_set = judged.part_set
    yield main_sentence(judged, length_unit)
    unit, factor = shop_unit(part_set.unit, length_unit)
    if judged.verdict in ("room enough", "not measured") and judged.after is not None:
        yield _room(judged, judged.after, length_unit)
    if judged.before is not None:
        yield tr(
            "With the old parts it was {room_words}.",
            room_words=room_words(judged.before, unit, factor),
        )
    yield from _change(judged, unit, factor)
    if judged.taken:
        listed = "; ".join(_share(one, unit, factor) for one in judged.taken)
        yield tr("Not measured, but taken as usual: {listed}.", listed=listed)
    unseen = part_set.at_most_given and judged.at_most is None and judged.after is not None
    if unseen and judged.verdict != "not measured":
        yield tr(
            "The other end was not looked at: the {limit_label} is not entered.",
            limit_label=_limit_label(part_set),
        )
    if part_set.honest:
        yield part_set.honest


def _touching(part_set: PartSet, room: SetRoom) -> str:
    """Say what a room means that can reach nothing: proof only where nothing was just taken."""
    if not room.taken:
        return tr("It can reach nothing. {say_touch}", say_touch=part_set.say_touch)
    if room.value - part_set.at_least + room.doubt <= 0:
        return tr("Nothing is left even without play: check that each of these parts is right.")
    usual = [one for one in room.taken if one.moves]
    if usual:
        return tr(
            "Play may use that up. Measure the play first, and check that each of these parts is "
            "right."
        )
    return tr(
        "Play may use that up. Measure first what was taken as usual, and check that each of these "
        "parts is right."
    )


def _limit_label(part_set: PartSet) -> str:
    term = part_set.given_term(part_set.at_most_given)
    return part_set.at_most_given if term is None else term.label


def _room(judged: SetComparison, room: SetRoom, length_unit: str) -> str:
    unit, factor = shop_unit(judged.part_set.unit, length_unit)
    said, result = room_words(room, unit, factor), judged.part_set.result
    if not room.place:
        return tr("With the new parts the {result} is {said}.", result=result, said=said)
    return tr(
        "With the new parts the {result} at {place}, the tightest, is {said}.",
        result=result,
        place=room.place,
        said=said,
    )


def _change(judged: SetComparison, unit: str, factor: float) -> Iterator[str]:
    if judged.change is None:
        return
    change, expanded = judged.change.value * factor, judged.change.expanded() * factor
    result = judged.part_set.result
    if abs(change) <= expanded:
        most = amount(abs(change) + expanded, unit, expanded)
        yield tr(
            "From the old parts to the new ones the {result} changed by less than {most}.",
            result=result,
            most=most,
        )
        return
    moved = {
        "result": result,
        "amount": amount(abs(change), unit, expanded),
        "doubt": doubt(expanded),
    }
    yield (
        tr(
            "From the old parts to the new ones the {result} became {amount} larger{doubt}. "
            "What is the same before and after cancels in that.",
            **moved,
        )
        if change > 0
        else tr(
            "From the old parts to the new ones the {result} became {amount} smaller{doubt}. "
            "What is the same before and after cancels in that.",
            **moved,
        )
    )


def _share(one: Share, unit: str, factor: float) -> str:
    value, half_width = one.value * factor, one.half_width * factor
    figures = f"± {amount(half_width, unit, half_width)}"
    return f"{one.label} ({number(value)} {figures})" if value else f"{one.label} ({figures})"
