"""Deeds about parts that meet: a figure of the car is entered for the set."""

from __future__ import annotations

import json

from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.part_sets.part_set import GivenTerm, PartSet
from desktop_app.parts_compared.shown_value import amount
from desktop_app.parts_compared.stored import KeptSum
from desktop_app.parts_compared.stored_sets import kept_figures, set_key
from desktop_app.parts_compared.typed_limit import limit_text, read_limit
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def enter_for_set(
    record: ShopRecord,
    job_id: int,
    part_set: PartSet,
    position: str,
    name: str,
    text: str,
    length_unit: str = "mm",
    kept_as: str = "",
) -> Done:
    """Enter a given term of a set as it was measured on this car; an empty text takes it back.

    `kept_as` is the name under which a JobSet keeps its figures; without it the set's only
    meeting in the position is meant. Raises a ShopTrouble that says what is accepted; nothing is
    changed then.
    """
    term = part_set.given_term(name)
    if term is None:
        raise ShopTrouble(
            tr("{set_name} has no figure called {figure}.", set_name=part_set.name, figure=name)
        )
    value = read_limit(text, _dimension(term, part_set.unit), length_unit)
    key = kept_as or set_key(part_set.id, position)

    def work(deed: Deed) -> None:
        kept = kept_figures(deed, job_id, key)
        figures = {} if kept is None else dict(kept[1])
        figures.pop(name, None)
        if value is not None:
            figures[name] = value
        written = _written(part_set, figures, length_unit)
        if kept is not None and figures:
            deed.change(KeptSum, kept[0], **written)
        elif kept is not None:
            deed.remove(KeptSum, kept[0])
        elif figures:
            deed.add(KeptSum, job_id=job_id, sum=key, on_sheet=0, **written)

    return record.do(tr("Enter the {label}", label=term.label), work)


def figure_text(value: float | None, term: GivenTerm, unit: str, length_unit: str) -> str:
    """Return an entered figure as its field shows it."""
    return limit_text(value, _dimension(term, unit), length_unit)


def _written(part_set: PartSet, figures: dict[str, float], length_unit: str) -> dict[str, str]:
    """Return the figures as a kept sum has them; the set's own verdict is worked out anew."""
    unit, factor = shop_unit(part_set.unit, length_unit)
    terms = [one for one in part_set.given if one.name in figures]
    inputs = [(one.label, amount(figures[one.name] * factor, unit)) for one in terms]
    listed = "; ".join(f"{label} {text}" for label, text in inputs)
    kept = {"name": part_set.name, "limit": "", "inputs": inputs, "figures": figures}
    return {
        "inputs": json.dumps(kept, sort_keys=True, ensure_ascii=False),
        "sentence": tr("Entered for {name}: {listed}.", name=part_set.name, listed=listed),
    }


def _dimension(term: GivenTerm, unit: str) -> Dimension:
    return Dimension(
        name=term.name,
        label=term.label,
        unit=unit,
        role="limit",
        allowed=None,
        direction=None,
        instrument="",
        essential=False,
        basis=term.basis,
    )
