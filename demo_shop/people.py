"""The people of the demo shop, its suppliers, and the tools in its drawer; all invented."""

from __future__ import annotations

from dataclasses import dataclass

SHOP_NAME = "Tin Heron Garage"
OWNER, COUNTER = "Odile", "Benno"
TECHNICIANS = ("Marek", "Tuuli")
HELPING_HAND = "Sanne"
PEOPLE = (OWNER, COUNTER, *TECHNICIANS, HELPING_HAND)
HARBOUR, MILL, NORTH = "Harbour", "Mill", "North"
SUPPLIERS = (HARBOUR, MILL, NORTH)


@dataclass(frozen=True, slots=True)
class DrawerTool:
    """An instrument of the drawer: figures in its unit, and how many days ago it was checked."""

    name: str
    unit: str
    resolution: float
    max_error: float
    checked_days_ago: int


# Figures as usual for such tools; common practice, no source. One check is overdue on purpose.
DRAWER = (
    DrawerTool("calliper", "mm", 0.01, 0.03, 96),
    DrawerTool("depth rod", "mm", 0.01, 0.04, 96),
    DrawerTool("micrometer", "mm", 0.01, 0.004, 203),
    DrawerTool("feeler gauge", "mm", 0.05, 0.005, 140),
    DrawerTool("pin gauge", "mm", 0.02, 0.005, 140),
    DrawerTool("dial indicator", "mm", 0.01, 0.015, 471),
    DrawerTool("rib gauge", "mm", 0.1, 0.1, 250),
    DrawerTool("steel rule", "mm", 0.5, 0.3, 96),
    DrawerTool("tape", "mm", 1.0, 1.0, 96),
    DrawerTool("protractor", "deg", 1.0, 0.5, 250),
    DrawerTool("ohmmeter", "ohm", 0.1, 0.3, 61),
    DrawerTool("voltmeter", "V", 0.01, 0.02, 61),
    DrawerTool("pressure gauge", "kPa", 5.0, 10.0, 320),
)
