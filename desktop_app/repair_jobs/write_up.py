"""What is asked when a vehicle comes: which one, its odometer, and the customer's own words."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.repair_jobs.entry_bounds import check_reading, check_word
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.shop_record.trouble import ShopTrouble


class NotSaid(ShopTrouble):
    """An answer is missing; `about` says which: "car", "odometer" or "concern"."""

    def __init__(self, about: str, what: str, do: str) -> None:
        super().__init__(what, do=do)
        self.about = about


@dataclass(frozen=True, slots=True)
class WriteUp:
    """The answers of the write-up; `vehicle_id` where the vehicle was here before.

    Then `odometer` counts in that vehicle's own unit and `odometer_unit` is not looked at. Where it
    is another car than the one that is known by this plate, `another_than` names that one.

    Of `vin`, `plate` and `tag` one is needed; either `odometer` (a whole number in
    `odometer_unit`, read, told or estimated) or `odometer_unread` (why it cannot be read); and the
    concern. `symptoms` and
    `conditions` are those that the customer's words name.
    """

    concern: str
    vehicle_id: int | None = None
    another_than: int | None = None
    vin: str = ""
    plate: str = ""
    tag: str = ""
    description: str = ""
    odometer_unit: str = "mi"
    odometer: int | None = None
    odometer_unread: str = ""
    odometer_source: str = "read"
    customer: str = ""
    phone: str = ""
    brought_by: str = ""
    says_same: bool = False
    came_at: str = ""
    symptoms: tuple[str, ...] = ()
    conditions: tuple[str, ...] = ()

    def check(self) -> None:
        """Raise a ShopTrouble that names the first answer that is missing or cannot be."""
        if self.vehicle_id is None and not (self.vin or self.plate or self.tag):
            raise NotSaid(
                "car",
                tr("Which car is it?"),
                do=tr("Type its plate, its VIN or a tag of your own."),
            )
        if self.odometer is None and not self.odometer_unread.strip():
            raise NotSaid(
                "odometer",
                tr("What does the odometer say?"),
                do=tr("Type the reading, or choose why it cannot be read."),
            )
        check_reading(self.odometer)
        check_word(tr("the unit of an odometer"), self.odometer_unit, ("mi", "km"))
        check_word(tr("how the odometer is known"), self.odometer_source, READING_SOURCES)
        if not self.concern.strip():
            raise NotSaid(
                "concern",
                tr("What does the customer say?"),
                do=tr("Write it down in their own words."),
            )
