"""Was it dangerous? Whether somebody could have been hurt by what came back."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_actions import deeds_of
from desktop_app.returns_watched.screen.return_box import ReturnBox
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.kept_choice import KeptChoiceField
from desktop_app.shop_window.texts import plain_label

# What can hurt somebody, and what to do then: common practice, no source.
_THINK_OF = tr(
    "Think of brakes, steering, wheels and tyres, fuel, fire, restraints, and an "
    "engine that dies on the road: could somebody have been hurt?"
)
_DO = {
    True: tr(
        "Tell the customer today not to drive it, and have it fetched and looked at. Keep "
        "the old parts."
    ),
    False: tr("This says what came back, and nothing of how the car is now."),
}


class DangerBox(ReturnBox):
    """One choice: yes, no, or that nobody said."""

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__(tr("Was it dangerous?"), desk, judging)
        answers = [
            (None, tr("not said")),
            (True, tr("yes, somebody could have been hurt")),
            (False, tr("no")),
        ]
        self._deed = deeds_of(judging).say_dangerous
        self._choice = KeptChoiceField(desk, tr("Was it dangerous?"), answers, self._save)
        shortest = KeptChoiceField.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        self._choice.setSizeAdjustPolicy(shortest)  # its longest answer is wider than a narrow page
        self._box = Labelled(tr("Dangerous"), self._choice)
        self.column.addWidget(plain_label(_THINK_OF, "quiet", wrap=True))
        self.column.addWidget(self._box)

    def show_return(self, judging: Judging) -> None:
        """Show what is kept."""
        self.take(judging)
        self._choice.show_value(judging.dangerous)
        self._box.hint("" if judging.dangerous is None else _DO[judging.dangerous])

    def _save(self, dangerous: bool | None) -> object:
        return self.do(self._deed, dangerous)
