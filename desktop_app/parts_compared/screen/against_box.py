"""What a person adds to a dimension: why a difference is in order, or the maker's limits."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import Explanation, MakerLimit
from desktop_app.parts_compared.screen.fields_together import FieldsTogether
from desktop_app.parts_compared.typed_limit import limit_text, read_limit
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts


class ExplainBox(FieldsTogether):
    """Two fields: why the difference is as it should be, and who says so."""

    def __init__(self, desk: Desk, pair_id: int, dimension: Dimension) -> None:
        super().__init__(
            [
                (tr("Is that as it should be? Why?"), tr("why, {label}", label=dimension.label)),
                (tr("By whose word"), tr("by whose word, {label}", label=dimension.label)),
            ],
            self._explain,
            Drafts(desk.record.folder),
            f"explained-{pair_id}-{dimension.name}",
        )
        self._desk = desk
        self._pair_id = pair_id
        self._dimension = dimension.name
        self._kept: Explanation | None = None
        for field, example in zip(
            self.fields,
            (tr("superseded number, adapter in the box …"), tr("letter, bulletin or person")),
            strict=True,
        ):
            field.setPlaceholderText(example)

    def show_explanation(self, explanation: Explanation | None) -> None:
        """Show what was explained."""
        self._kept = explanation
        self.show_texts([explanation.why, explanation.by] if explanation else ["", ""])

    def _explain(self, texts: list[str]) -> object:
        why, by = (text.strip() for text in texts)
        if not why and by and self._kept is None:
            return None
        if why and not by:
            self.say(tr("By whose word? It is kept once that is said."))
            return None
        self.say("")
        by = by if why else ""
        return self._desk.do(actions.explain_difference, self._pair_id, self._dimension, why, by)


class LimitBox(FieldsTogether):
    """Three fields: the maker's lower and upper limit, and where they stand."""

    def __init__(self, desk: Desk, pair_id: int, dimension: Dimension) -> None:
        super().__init__(
            [
                (tr("Maker's limit: at least"), tr("at least, {label}", label=dimension.label)),
                (tr("at most"), tr("at most, {label}", label=dimension.label)),
                (
                    tr("where that stands"),
                    tr("where the limits stand, {label}", label=dimension.label),
                ),
            ],
            self._enter,
            Drafts(desk.record.folder),
            f"limits-{pair_id}-{dimension.name}",
        )
        self._desk = desk
        self._pair_id = pair_id
        self._dimension = dimension
        self._kept: MakerLimit | None = None

    def show_limit(self, limit: MakerLimit | None) -> None:
        """Show the limits that were entered."""
        self._kept = limit
        unit = self._desk.rules.length_unit
        ends = (limit.at_least, limit.at_most) if limit else (None, None)
        texts = [limit_text(end, self._dimension, unit) for end in ends]
        self.show_texts([*texts, limit.source if limit else ""])

    def _enter(self, texts: list[str]) -> object:
        unit = self._desk.rules.length_unit
        try:
            low, high = (read_limit(text, self._dimension, unit) for text in texts[:2])
        except ShopTrouble as trouble:
            self.say(trouble.sentence())
            return None
        if low is not None and high is not None and low > high:
            self.say(tr("The lower limit is above the upper one. Swap them."))
            return None
        if low is None and high is None and self._kept is None:
            self.say(tr("One of the two limits is needed; the other may stay open."))
            return None
        self.say("")
        return self._desk.do(
            actions.enter_limits,
            *(self._pair_id, self._dimension.name, low, high, texts[2].strip()),
        )
