"""The cars of the demo's plain jobs: a class, a plate, an owner, how far it is driven."""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from datetime import date

from demo_shop.car_papers import invented_vin

_ENGINES = ("1.0", "1.2", "1.4", "1.6", "1.8", "2.0", "2.2", "2.5")
_BODIES = (
    *("hatchback", "saloon", "estate", "compact hatchback", "family van", "coupé"),
    *("pickup", "crossover", "city car", "diesel estate", "minivan"),
)
_DECADES = ((1990, 1), (2000, 4), (2010, 5))
_FIRST = (
    *("Adler", "Birch", "Cobb", "Dray", "Eddow", "Fairlight"),
    *("Garrow", "Hartle", "Ingle", "Jessop", "Kestle", "Lorne"),
)
_LAST = (
    *("brook", "croft", "dale", "field", "gate", "ham"),
    *("ley", "moor", "ridge", "stead", "wick", "worth"),
)


@dataclass(slots=True)
class PlainCar:
    """One car: its odometer on a known day, miles a day, and what was repaired on it so far."""

    description: str
    plate: str
    vin: str
    customer: str
    known_on: date
    odometer: int
    miles_a_day: float
    row: int | None = None
    customer_row: int | None = None
    repaired: set[str] = field(default_factory=set)
    last_left: date = date.min

    def reading(self, day: date) -> int:
        """Return what the odometer says on a day."""
        return self.odometer + round(self.miles_a_day * (day - self.known_on).days)


def plain_car(chance: random.Random, number: int, day: date) -> PlainCar:
    """Return a new car as it first comes on a day; `number` makes its plate its own."""
    decade = chance.choices([d for d, _ in _DECADES], [w for _, w in _DECADES])[0]
    year = decade + chance.randrange(10)
    family = (chance.choice(_FIRST) + chance.choice(_LAST)).capitalize()
    age = max(day.year - year, 1)
    return PlainCar(
        description=f"{chance.choice(_ENGINES)}-litre {chance.choice(_BODIES)}, {decade}s",
        plate=f"TH {number}",
        vin=invented_vin(chance, year) if chance.random() < 0.85 else "",
        customer=f"{chance.choice(('Ms', 'Mr'))} {family}",
        known_on=day,
        odometer=chance.randrange(2_500, 6_500) * age + chance.randrange(20_000),
        miles_a_day=chance.uniform(14, 46),
    )
