"""What proves a repair, system by system: in the bay, on the road, and when it is enough."""

from __future__ import annotations

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.proof import ProofChecks

# Every figure here is common practice, no source: the vehicle maker's procedure comes first.
_MAKER_FIRST = tr("The vehicle maker's procedure and limits come first.")

_CHECKS = (
    ProofChecks(
        "ignition",
        (
            marked("misfire counters at zero for 15 min from cold"),
            marked("same test, same load, before and after"),
        ),
        (
            marked("warm-up, 5 min steady, 3 pulls in a high gear, overrun, hot idle"),
            marked("wet road if told wet"),
        ),
        marked(
            "The misfire test ran, no code is pending, and the weather was met or said not met."
        ),
    ),
    ProofChecks(
        "fuel",
        (marked("pressure and leak-down"), marked("trims at idle and at 2,500 rpm")),
        (marked("15 to 20 miles, then trims under load"),),
        marked(
            "The whole trim stays within 10 % at three loads and no lean or rich code is pending."
        ),
    ),
    ProofChecks(
        "starting",
        (marked("starter draw and voltage drops"), marked("cranking speed")),
        (
            marked("10 hot restarts after 5 to 30 min each"),
            marked("one cold start the next morning"),
        ),
        marked("Every start came within the time that the customer calls normal."),
    ),
    ProofChecks(
        "charging",
        (
            marked("volts without and with load, ripple, drops"),
            marked("key-off draw once the modules sleep"),
        ),
        (marked("a drive with the night load on"),),
        marked(
            "The draw is within the maker's figure or below 50 mA, and it started the next day."
        ),
    ),
    ProofChecks(
        "cooling",
        (marked("pressure test cold"), marked("bled, and two cycles of the fan")),
        (marked("a hill or a loaded run with the heater on and the temperature noted"),),
        marked(
            "The level holds after cooling down; it settles at what the thermostat is stamped with."
        ),
    ),
    ProofChecks(
        "evaporative",
        (marked("smoke or pressure as far as allowed"), marked("the seals looked at")),
        (marked("a cold soak and a part-full tank, as most cars ask for"),),
        marked("The car's leak test ran; otherwise it is handed over as not run."),
    ),
    ProofChecks(
        "exhaust",
        (marked("heater currents and switching of the sensors"),),
        (marked("a trip with steady cruising and overrun"),),
        marked("The tests of catalyst and sensors ran and no code is pending."),
    ),
    ProofChecks(
        "brakes",
        (marked("pedal held for a minute, no leak"), marked("parking brake, run-out, fluid level")),
        (
            marked(
                "empty road, gentle first stops, bedding in as the lining's maker says, "
                "straight stop"
            ),
        ),
        marked(
            "Firm pedal, no pull, no pulsing, no drag. Never left out, not even at closing time."
        ),
    ),
    ProofChecks(
        "suspension",
        (marked("no play, joints tightened at ride height"),),
        (marked("the road where the noise was told of"),),
        marked("Quiet on that road, and the wheels' torque checked again."),
    ),
    ProofChecks(
        "steering",
        (marked("no play, alignment sheet"),),
        (marked("bumps, lock to lock, a crowned highway"),),
        marked("The wheel stands straight and the road told of is quiet."),
    ),
    ProofChecks(
        "wheels",
        (marked("no play, four wheel speeds alike"),),
        (marked("the speed told of, bends to both sides"),),
        marked("Quiet at that speed, and the wheels' torque checked again."),
    ),
    ProofChecks(
        "driveline",
        (marked("no leak, fluid level"),),
        (marked("take-up, tight circles both ways"),),
        marked("The load told of was met."),
    ),
    ProofChecks(
        "transmission",
        (marked("no leak, fluid level, learning done where the maker asks for it"),),
        (marked("all gears hot"),),
        marked("The load told of was met."),
    ),
    ProofChecks(
        "wheel-speed",
        (marked("four wheel speeds alike"),),
        (marked("the self-test on driving off"),),
        marked("The lamp is out and no code is stored."),
    ),
    ProofChecks(
        "electrical",
        (
            marked("voltage drop under load"),
            marked("wiggled with minimum and maximum kept"),
            marked("water, if told wet"),
        ),
        (marked("rough road with every load on"),),
        marked("No dropped message for as long as the customer's own frequency asks for."),
    ),
    ProofChecks(
        "air-conditioning",
        (marked("by licensed people: leak test, pressures against the outside temperature"),),
        (marked("20 min at idle and a drive"),),
        marked("The vents stay at one temperature and the fan cycles."),
    ),
    ProofChecks(
        "restraints",
        (marked("the maker's procedure, by a qualified person only"),),
        (marked("the lamp's own test"),),
        marked("The lamp is out. Nothing is ever improvised here."),
    ),
)

_ANY = ProofChecks(
    "",
    (marked("works, no leak, no code, measured again"),),
    (marked("driven under the conditions told of"),),
    marked("The concern did not happen where it had to."),
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


def check_words(kept: str) -> str:
    """Return a check as it is shown: ours and the part kinds' in the language spoken."""
    return tr(kept)


def check_sentence(kept: str) -> str:
    """Return a check as it stands in a list: all begin with a capital and end with a stop."""
    words = check_words(kept)
    return f"{words[:1].upper()}{words[1:]}{'' if words.endswith('.') else '.'}"


def maker_first() -> str:
    """Return the sentence that stands above every list of checks."""
    return _MAKER_FIRST
