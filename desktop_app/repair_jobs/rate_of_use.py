"""How much a vehicle is driven: from its own visits, drawn towards the shop's typical vehicle."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from desktop_app.figures_shown import filled
from desktop_app.language import tr
from desktop_app.repair_jobs.odometer import (
    OdometerReading,
    OdometerReplaced,
    RunningMiles,
    days_of_use,
    running_miles,
)

# What is taken for a shop that has too few vehicles to know its own figures. Common practice, no
# source: some 12,000 miles a year; two vehicles in three within a factor of 1.8 of that; and a
# month's driving that is off its average by some 60 %.
USUAL_MILES_A_DAY = 33.0
USUAL_SPREAD = 0.6
USUAL_UNSTEADY_DAYS = 10.0
FEWEST_VEHICLES = 12
SHORTEST_DAYS = 14  # a shorter stretch says more about the week than about the vehicle
_Z95 = 1.959963984540054  # the 97.5 % point of the normal distribution


@dataclass(frozen=True, slots=True)
class Stretch:
    """Miles driven over so many days; `off_by` is the doubt of the miles, a standard deviation."""

    days: float
    miles: float
    off_by: float = 0.0


@dataclass(frozen=True, slots=True)
class ShopUse:
    """How the shop's vehicles are used.

    `log_miles` is the mean logarithm of miles a day, `spread` its standard deviation between
    vehicles. `unsteady_days` (c) says how uneven one vehicle's driving is: over t days its rate
    has the variance c / t, relative to the rate squared. `vehicles` is how many it rests on.
    """

    log_miles: float = math.log(USUAL_MILES_A_DAY)
    spread: float = USUAL_SPREAD
    unsteady_days: float = USUAL_UNSTEADY_DAYS
    vehicles: int = 0


@dataclass(frozen=True, slots=True)
class RateOfUse:
    """Miles a day, with the bounds that hold it with 95 %.

    `own_share` is how much of the figure comes from the vehicle's own visits, 0 to 1; `days` how
    long these look back. `vehicles` are those of the shop that say what is typical; 0 where too
    few were read, and the usual figure that comes with the program stands in for them.
    """

    miles_a_day: float
    low: float
    high: float
    own_share: float
    days: int
    log_sd: float
    unsteady_days: float
    vehicles: int = 0


def stretches_of(
    readings: Sequence[OdometerReading], replaced: Sequence[OdometerReplaced] = ()
) -> tuple[Stretch, ...]:
    """Return the stretches between a vehicle's readings that are long enough to say something.

    Shorter ones are put together; the time that the car stood in the shop belongs to none. What was
    told or estimated counts at the end only, with its doubt, and only where it fits what was read
    before.
    """
    order = sorted(readings, key=lambda reading: reading.on)
    told = order[-1] if order and order[-1].source != "read" else None
    # Where a told one stands on the running scale is where it would stand if it had been read.
    asked = order if told is None else [*order[:-1], replace(told, source="read")]
    found: list[Stretch] = []
    last: tuple[OdometerReading, RunningMiles] | None = None
    days, miles = 0, 0.0
    for reading, place in zip(order, running_miles(asked, replaced), strict=True):
        if place is None:
            continue
        if last is None or last[1].leg != place.leg:
            days, miles = 0, 0.0
        elif gone := days_of_use(last[0], reading):
            days, miles = days + gone, miles + place.miles - last[1].miles
            if days >= SHORTEST_DAYS:
                # A doubt of a, either way and all equally likely, is a standard deviation of a / √3
                # (JCGM 100:2008, 4.3.7).
                found.append(Stretch(days, miles, reading.off_by / math.sqrt(3)))
                days, miles = 0, 0.0
        last = (reading, place)
    return tuple(found)


def shop_use(vehicles: Sequence[Sequence[Stretch]]) -> ShopUse:
    """Return how the shop's vehicles are used, from the stretches of each.

    Unevenness is pooled within vehicles: the squared departures (d - R t)² / (R² t) over their
    degrees of freedom. The spread between vehicles is the method of moments of DerSimonian and
    Laird (Controlled Clinical Trials 7, 1986, 177-188) on the logarithms.
    """
    sums = [(sum(s.days for s in own), sum(s.miles for s in own)) for own in vehicles]
    known = [(days, miles, own) for (days, miles), own in zip(sums, vehicles, strict=True) if miles]
    if len(known) < FEWEST_VEHICLES:
        return ShopUse()
    uneven = _unsteady(known)
    logs = [math.log(miles / days) for days, miles, _ in known]
    variances = [uneven / days for days, _, _ in known]
    mean, between = between_vehicles(logs, variances)
    return ShopUse(mean, math.sqrt(between), uneven, len(known))


def between_vehicles(values: Sequence[float], variances: Sequence[float]) -> tuple[float, float]:
    """Return the weighted mean of values and their variance beyond what each one's own explains.

    Never below (0.1)²: no two drivers are alike, and a shop of clones would trust nothing else.
    """
    weights = [1 / variance for variance in variances]
    total = sum(weights)
    fixed = sum(w * v for w, v in zip(weights, values, strict=True)) / total
    q = sum(w * (v - fixed) ** 2 for w, v in zip(weights, values, strict=True))
    room = total - sum(w * w for w in weights) / total
    between = max(0.01, (q - (len(values) - 1)) / room)
    weights = [1 / (variance + between) for variance in variances]
    mean = sum(w * v for w, v in zip(weights, values, strict=True)) / sum(weights)
    return mean, between


def _unsteady(known: Sequence[tuple[float, float, Sequence[Stretch]]]) -> float:
    squares = freedom = 0.0
    for days, miles, own in known:
        rate = miles / days
        squares += sum((s.miles - rate * s.days) ** 2 / s.days for s in own) / rate**2
        freedom += len(own) - 1
    if freedom < FEWEST_VEHICLES:
        return USUAL_UNSTEADY_DAYS
    return min(max(squares / freedom, 1.0), 60.0)


def rate_of_use(own: Sequence[Stretch], shop: ShopUse | None = None) -> RateOfUse:
    """Return a vehicle's rate from its own stretches, drawn towards the shop's typical vehicle.

    On the logarithm, own and typical rate are weighted by their precision: the empirical Bayes
    estimate of the normal model (Efron and Morris, J. Am. Stat. Assoc. 70, 1975, 311-319).
    """
    typical = shop or ShopUse()
    prior = typical.spread**2
    days, miles = sum(s.days for s in own), sum(s.miles for s in own)
    if days <= 0:
        return _said(typical.log_miles, prior, 0.0, 0, typical)
    # A car that stood still all the time still has a rate; its logarithm needs something to hold.
    log_own = math.log(max(miles, 1.0) / days)
    doubt = sum(s.off_by**2 for s in own) / max(miles, 1.0) ** 2
    noise = typical.unsteady_days / days + doubt
    share = prior / (prior + noise)
    mean = share * log_own + (1 - share) * typical.log_miles
    return _said(mean, share * noise, share, round(days), typical)


def _said(log_mean: float, variance: float, share: float, days: int, shop: ShopUse) -> RateOfUse:
    sd = math.sqrt(variance)
    return RateOfUse(
        miles_a_day=math.exp(log_mean),
        low=math.exp(log_mean - _Z95 * sd),
        high=math.exp(log_mean + _Z95 * sd),
        own_share=share,
        days=days,
        log_sd=sd,
        unsteady_days=shop.unsteady_days,
        vehicles=shop.vehicles,
    )


@dataclass(frozen=True, slots=True)
class DrivenBy:
    """The day by which a distance will probably be driven, and the days that hold it with 95 %."""

    on: date
    earliest: date
    latest: date


def driven_by(start: date, miles: float, rate: RateOfUse) -> DrivenBy:
    """Return when so many miles from a day on will be driven, at a vehicle's rate of use.

    Two doubts add: the rate's own, and that no month is driven like the other.
    """
    if miles <= 0:
        return DrivenBy(start, start, start)
    expected = miles / rate.miles_a_day
    sd = math.sqrt(rate.log_sd**2 + rate.unsteady_days / max(expected, 1.0))
    return DrivenBy(
        _after(start, expected),
        _after(start, expected * math.exp(-_Z95 * sd)),
        _after(start, expected * math.exp(_Z95 * sd)),
    )


def _after(start: date, days: float) -> date:
    return start + timedelta(days=min(int(days), (date.max - start).days))


def use_in_words(rate: RateOfUse, unit: str = tr("miles"), per_mile: float = 1.0) -> str:
    """Return the rate as a sentence: how much a day, its bounds, and what it rests on."""
    amount, low, high = (round(x * per_mile) for x in (rate.miles_a_day, rate.low, rate.high))
    if rate.days == 0:
        return tr(
            "How far it goes is not known; about {amount} {unit} a day is taken.",
            amount=amount,
            unit=unit,
        )
    if rate.own_share >= 0.5:
        words = tr(
            "Driven about {amount} {unit} a day ({low} to {high}), as its odometer showed "
            "over {days:,} days."
        )
    elif rate.vehicles:
        words = tr(
            "Driven about {amount} {unit} a day ({low} to {high}), mostly judged by other cars."
        )
    else:
        words = tr(
            "Driven about {amount} {unit} a day ({low} to {high}), mostly the program's usual "
            "figure: its own odometer says little yet, and too few other cars were read here."
        )
    named = {"amount": amount, "unit": unit, "low": low, "high": high, "days": rate.days}
    return filled(words, named)
