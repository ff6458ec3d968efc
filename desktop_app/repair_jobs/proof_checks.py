"""What proves a repair, system by system: in the bay, on the road, and when it is enough."""

from __future__ import annotations

from desktop_app.repair_jobs.proof import ProofChecks

# Every figure here is common practice, no source: the vehicle maker's procedure comes first.
_MAKER_FIRST = "The vehicle maker's procedure and limits come first."

_CHECKS = (
    ProofChecks(
        "ignition",
        ("misfire counters at zero for 15 min from cold", "same test, same load, before and after"),
        (
            "warm-up, 5 min steady, 3 pulls in a high gear, overrun, hot idle",
            "wet road if told wet",
        ),
        "The misfire test ran, no code is pending, and the weather was met or said not met.",
    ),
    ProofChecks(
        "fuel",
        ("pressure and leak-down", "trims at idle and at 2,500 rpm"),
        ("15 to 20 miles, then trims under load",),
        "The whole trim stays within 10 % at three loads and no lean or rich code is pending.",
    ),
    ProofChecks(
        "starting",
        ("starter draw and voltage drops", "cranking speed"),
        ("10 hot restarts after 5 to 30 min each", "one cold start the next morning"),
        "Every start came within the time that the customer calls normal.",
    ),
    ProofChecks(
        "charging",
        ("volts without and with load, ripple, drops", "key-off draw once the modules sleep"),
        ("a drive with the night load on",),
        "The draw is within the maker's figure or below 50 mA, and it started the next day.",
    ),
    ProofChecks(
        "cooling",
        ("pressure test cold", "bled, and two cycles of the fan"),
        ("a hill or a loaded run with the heater on and the temperature noted",),
        "The level holds after cooling down; it settles at what the thermostat is stamped with.",
    ),
    ProofChecks(
        "evaporative",
        ("smoke or pressure as far as allowed", "the seals looked at"),
        ("a cold soak and a part-full tank, as most cars ask for",),
        "The car's leak test ran; otherwise it is handed over as not run.",
    ),
    ProofChecks(
        "exhaust",
        ("heater currents and switching of the sensors",),
        ("a trip with steady cruising and overrun",),
        "The tests of catalyst and sensors ran and no code is pending.",
    ),
    ProofChecks(
        "brakes",
        ("pedal held for a minute, no leak", "parking brake, run-out, fluid level"),
        ("empty road, gentle first stops, bedding in as the lining's maker says, straight stop",),
        "Firm pedal, no pull, no pulsing, no drag. Never left out, not even at closing time.",
    ),
    ProofChecks(
        "suspension",
        ("no play, joints tightened at ride height",),
        ("the road where the noise was told of",),
        "Quiet on that road, and the wheels' torque checked again.",
    ),
    ProofChecks(
        "steering",
        ("no play, alignment sheet",),
        ("bumps, lock to lock, a crowned highway",),
        "The wheel stands straight and the road told of is quiet.",
    ),
    ProofChecks(
        "wheels",
        ("no play, four wheel speeds alike",),
        ("the speed told of, bends to both sides",),
        "Quiet at that speed, and the wheels' torque checked again.",
    ),
    ProofChecks(
        "driveline",
        ("no leak, fluid level",),
        ("take-up, tight circles both ways",),
        "The load told of was met.",
    ),
    ProofChecks(
        "transmission",
        ("no leak, fluid level, learning done where the maker asks for it",),
        ("all gears hot",),
        "The load told of was met.",
    ),
    ProofChecks(
        "wheel-speed",
        ("four wheel speeds alike",),
        ("the self-test on driving off",),
        "The lamp is out and no code is stored.",
    ),
    ProofChecks(
        "electrical",
        ("voltage drop under load", "wiggled with minimum and maximum kept", "water, if told wet"),
        ("rough road with every load on",),
        "No dropped message for as long as the customer's own frequency asks for.",
    ),
    ProofChecks(
        "air-conditioning",
        ("by licensed people: leak test, pressures against the outside temperature",),
        ("20 min at idle and a drive",),
        "The vents stay at one temperature and the fan cycles.",
    ),
    ProofChecks(
        "restraints",
        ("the maker's procedure, by a qualified person only",),
        ("the lamp's own test",),
        "The lamp is out. Nothing is ever improvised here.",
    ),
)

_ANY = ProofChecks(
    "",
    ("works, no leak, no code, measured again",),
    ("driven under the conditions told of",),
    "The concern did not happen where it had to.",
)
_BY_SYSTEM = {checks.system: checks for checks in _CHECKS}
# Systems that are proved as another one is.
_LIKE = {"engine-control": "ignition", "belt-drive": "charging", "clutch": "driveline"}
# Where a repair that was not checked can hurt someone; common practice, no source.
_NEVER_LEFT_OUT = {
    "brakes": ("bay", "road"),
    "steering": ("bay", "road"),
    "restraints": ("bay", "road"),
    "fuel": ("bay",),
}


def proof_checks(system: str) -> ProofChecks:
    """Return what proves a repair of this system (an id); the general list for any other."""
    return _BY_SYSTEM.get(_LIKE.get(system, system), _ANY)


def never_left_out(system: str) -> tuple[str, ...]:
    """Return the checks of a system (an id) that are asked about again before the car leaves."""
    checks, where = proof_checks(system), _NEVER_LEFT_OUT.get(system, ())
    return (*(checks.bay if "bay" in where else ()), *(checks.road if "road" in where else ()))


def maker_first() -> str:
    """Return the sentence that stands above every list of checks."""
    return _MAKER_FIRST
