"""What a file leaves open, asked about once: in a window by a choice, else by a line of a map."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class Question:
    """`option` is the map's key for the answer, `choices` what may stand there."""

    option: str
    choices: tuple[str, ...]
    row: int
    text: str
    says: str

    def refusal(self, file: str) -> ShopTrouble:
        """Return the refusal of a file where nobody can be asked."""
        either = tr(" or ").join(f'{self.option} = "{choice}"' for choice in self.choices)
        return ShopTrouble(
            tr("{file}, row {row}: {says}", file=file, row=self.row, says=self.says),
            do=tr("Write {either} into a map (--columns).", either=either),
        )
