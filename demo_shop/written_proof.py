"""How the written jobs were proved: how often it came, what was met, what the car's tests say.

The four bytes are those of SAE J1979 service 01, PID 01; the cars and their readings are invented.
"""

from __future__ import annotations

from demo_shop.proof_story import ProofStory
from desktop_app.repair_jobs.self_tests import SelfTestState

P = ProofStory

PROOFS = {
    "1": P(
        every=(10, "mi"), met=("damp", "rain", "pulling"), after="00 07 65 00",
        steps={"saved": "02-27 08:35", "photographed": "03-02 08:40", "repaired": "03-02 11:30",
               "cleared": "03-02 11:35", "noted": "03-02 11:38", "driven": "03-02 15:10",
               "pending-read": "03-02 15:14"},
    ),
    "2": P(not_met=("rain", "first-minute")),
    "3": P(met=("pulling", "always"), found="81 07 65 00", after="00 07 65 05"),
    "4": P(every=(3, "drives"), met=("hot", "restart-hot"), not_met=("random",)),
    "5": P(met=("lamps-on", "idle")),
    "6": P(
        met=("high-speed", "turning"),
        caught_here=("03-23 11:20", "The ABS lamp came on in the bay: the bearing's magnetic face "
                                    "stood outboard. Pressed out and in again, face inboard."),
    ),
    "7": P(met=("high-speed",), not_met=("cold",)),
    "8-first": P(every=(250, "mi"), met=("just-filled", "restart-hot"), not_met=("random",)),
    "8": P(every=(250, "mi"), met=("just-filled", "restart-hot")),
    "9a": P(
        every=(40, "mi"), met=("rain", "pulling"),
        by_hand={"misfire": SelfTestState.COMPLETE, "catalyst": SelfTestState.NOT_RUN},
        steps={"saved": "04-06 09:40", "photographed": "04-07 08:30", "repaired": "04-07 11:00",
               "cleared": "04-07 11:04", "noted": "04-07 11:06", "driven": "04-07 14:30",
               "pending-read": "04-07 14:40"},
    ),
    "9b": P(not_met=("hot",)),
    "10": P(met=("braking",), not_met=("high-speed",)),
    "11": P(met=("bump", "low-speed")),
    "12": P(met=("hot", "shifting")),
    "13": P(
        met=("pulling",), not_met=("passengers",),
        steps={"cleared": "05-06 10:50", "driven": "05-06 11:30"},
    ),
    "14": P(met=("pulling",)),
    "15": P(met=("bump", "rough"), provoked="14 in 5 min, then 0 in 5 min"),
    "16": P(every=(7, "days"), not_met=("after-standing",)),
    # The lamp is out again, and the leak test (evaporative system) has not run.
    "17": P(
        not_met=("just-filled",), found="81 07 65 00", after="00 07 65 05",
        steps={"saved": "06-02 10:20", "repaired": "06-03 09:30", "cleared": "06-03 09:35",
               "noted": "06-03 09:35"},
    ),
    "17-back": P(
        met=("just-filled",), found="00 07 65 04", after="00 07 65 01",
        steps={"saved": "06-08 10:00", "repaired": "06-08 14:00", "cleared": "06-08 14:05",
               "noted": "06-08 14:06", "driven": "06-08 15:30", "pending-read": "06-08 15:35",
               "cold-read": "06-09 08:10"},
    ),
    "19": P(
        met=("idle", "hot"), found="81 07 E5 00", after="00 07 E5 05",
        steps={"saved": "07-07 09:05", "photographed": "07-08 08:30", "repaired": "07-08 10:40",
               "cleared": "07-08 10:44", "noted": "07-08 10:45", "driven": "07-08 13:30",
               "pending-read": "07-08 13:35", "cold-read": "07-08 16:55"},
    ),
    "20": P(
        every=(1, "days"), met=("cold", "damp", "first-start"), after="00 07 65 00",
        caught_here=("08-21 15:40", "It spat back through the intake at the first start in the "
                                    "bay: leads 2 and 4 were crossed. Put right by the order."),
    ),
    "10-back": P(met=("braking",), not_met=("high-speed",)),
    "10-again": P(met=("braking", "high-speed")),
    "13-back": P(met=("pulling", "passengers"), found="81 07 65 00", after="00 07 65 05"),
    "16-back": P(every=(7, "days"), met=("after-standing",)),
    "hatch-now": P(
        every=(40, "mi"), found="81 07 65 00", steps={"saved": "back2 09:40"},
    ),
}  # fmt: skip
