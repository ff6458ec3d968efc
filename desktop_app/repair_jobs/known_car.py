"""What is known of a car that comes again, and what speaks against its being the same one."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit, unit_words
from desktop_app.repair_jobs.job_view import VehicleSeen
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.typed_entry import unit_named
from desktop_app.repair_jobs.vehicle_identity import VehicleNames, matching_plate
from desktop_app.repair_jobs.vin import is_well_formed, matching_vin


@dataclass(frozen=True, slots=True)
class StillHere:
    """The newest visit of a car that has jobs which were not handed over, by their numbers."""

    visit_id: int
    since: date
    numbers: tuple[str, ...]

    def question(self) -> str:
        """Return what is asked before the car is taken in once more."""
        since, numbers = day_in_words(self.since), ", ".join(self.numbers)
        if len(self.numbers) == 1:
            return tr(
                "This car is in the shop since {day}: {number} was not handed over. "
                "Is this another concern of that visit?",
                day=since,
                number=numbers,
            )
        return tr(
            "This car is in the shop since {day}: {numbers} were not handed over. "
            "Is this another concern of that visit?",
            day=since,
            numbers=numbers,
        )


@dataclass(frozen=True, slots=True)
class KnownCar:
    """A car that was here before: its row, its last visit, and the day it was sold since then."""

    vehicle: VehicleSeen
    last_on: date | None = None
    sold_on: date | None = None
    still_here: StillHere | None = None
    customer: str = ""
    phone: str = ""

    @property
    def unit(self) -> DistanceUnit:
        """The unit that its odometer counts in."""
        return "km" if self.vehicle.odometer_unit == "km" else "mi"

    def in_words(self, today: date) -> str:
        """Return what is known of it in a line."""
        car = self.vehicle
        vin = tr("VIN ends {end}", end=car.vin[-6:]) if car.vin else tr("no VIN known")
        said = [car.plate or car.tag, car.description, vin]
        if self.last_on is not None:
            said.append(
                tr("last here on {day_and_age}", day_and_age=_day_and_age(self.last_on, today))
            )
        if self.sold_on is not None:
            said.append(tr("sold on {day}", day=day_in_words(self.sold_on)))
        return " · ".join(part for part in said if part)


@dataclass(frozen=True, slots=True)
class Typed:
    """What is typed of a car that is taken in."""

    plate: str = ""
    vin: str = ""
    description: str = ""
    odometer: str = ""


def against_the_same(known: KnownCar, typed: Typed, odd_odometer: bool) -> tuple[str, ...]:
    """Return what speaks against its being the same car, each in a sentence.

    Nothing does where the VIN typed is its own: a VIN decides alone. `odd_odometer` says that the
    reading does not fit the car's earlier ones.
    """
    car = known.vehicle
    vin = VehicleNames(typed.vin).known_vin
    if vin and vin == VehicleNames(car.vin).known_vin:
        return ()
    against = []
    if known.sold_on is not None:
        against.append(
            tr(
                "The car with this plate was sold on {day}.",
                day=day_in_words(known.sold_on),
            )
        )
    if car.description and not _says_the_same(car.description, typed.description):
        against.append(
            tr(
                "It is written down as “{description}”; that stays if it is the same car.",
                description=car.description,
            )
        )
    if vin:
        against.append(tr("It had no whole VIN until now."))
    named = unit_named(typed.odometer)
    if named is not None and named != known.unit:
        against.append(tr("Its odometer counted in {unit}.", unit=unit_words(known.unit)))
    if odd_odometer:
        against.append(tr("The odometer does not go on from what it said."))
    return tuple(against)


def news_of(car: VehicleSeen, typed: Typed, tag: str = "") -> dict[str, str]:
    """Return the columns of a known car's row that are newly known; what is known stays.

    A spelling of the same plate is no news, nor are other words for the car. Another plate is,
    on a car that its VIN tells: it carries the new one from now on.
    """
    news = {}
    if not is_well_formed(car.vin) and matching_vin(typed.vin) != car.vin:
        news["vin"] = matching_vin(typed.vin)
    if matching_plate(typed.plate) != matching_plate(car.plate):
        news["plate"] = typed.plate.strip()
        news["plate_key"] = matching_plate(typed.plate)
    if not car.tag:
        news["tag"] = tag.strip()
    if not car.description:
        news["description"] = typed.description.strip()
    return {name: value for name, value in news.items() if value}


def _says_the_same(one: str, other: str) -> bool:
    """Tell whether two descriptions agree: one says nothing that the other does not."""
    first, second = (set(words.casefold().replace(",", " ").split()) for words in (one, other))
    return first <= second or second <= first


def _day_and_age(day: date, today: date) -> str:
    days = (today - day).days
    if days < 0:
        return day_in_words(day)
    if days == 0:
        return tr("{day}, today", day=day_in_words(day))
    if days == 1:
        return tr("{day}, yesterday", day=day_in_words(day))
    return tr("{day}, {days:,} days ago", day=day_in_words(day), days=days)
