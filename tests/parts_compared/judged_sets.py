"""The part sets that come with the program, judged from invented readings."""

from __future__ import annotations

from desktop_app.parts_compared.part_sets.part_set_file import load_sets
from desktop_app.parts_compared.part_sets.set_sentence import set_sentences
from desktop_app.parts_compared.part_sets.set_shares import PartRead, SetRead
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison, judge_set
from desktop_app.parts_compared.reading import Reading
from desktop_app.shop_record.own_program.resource_folder import resource_path
from tests.parts_compared.invented_kinds import both
from tests.parts_compared.sheet_story import kinds

SETS = {one.id: one for one in load_sets(resource_path("part_sets"))}
# Play of the bushing, bend of the shaft and seat of the cap, as the set has them.
PLAY = 0.08 + 0.03 + 0.10
PADS = (
    *both("lining-thickness", 4.0, 11.0),
    *both("plate-thickness", 5.5, 5.5),
)


def judged(name: str, *parts: tuple[str, list[Reading]], **entered: float) -> SetComparison:
    """Judge a set that comes with the program; entered names with underscores for hyphens."""
    reads = {kind: PartRead(kinds()[kind], tuple(readings)) for kind, readings in parts}
    named = {key.replace("_", "-"): value for key, value in entered.items()}
    return judge_set(SetRead(SETS[name], reads, entered=named))


def rotor_and_cap(tip: tuple[float, float], terminal: tuple[float, float]) -> SetComparison:
    """Judge a rotor and a cap, three equal readings on each side."""
    return judged(
        "rotor-and-cap",
        ("distributor-rotor", both("tip-radius", [tip[0]] * 3, [tip[1]] * 3)),
        ("distributor-cap", both("terminal-radius", [terminal[0]] * 3, [terminal[1]] * 3)),
    )


def words(one: SetComparison, unit: str = "mm") -> str:
    """Return everything that a set says."""
    return " ".join(set_sentences(one, unit))
