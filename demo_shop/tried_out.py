"""The bench sums that the demo shop kept with its jobs, and the gauge study of its calliper."""

from __future__ import annotations

from demo_shop.people import TECHNICIANS
from demo_shop.storyteller import Storyteller
from desktop_app.parts_compared import gauge_actions
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.sum_actions import keep_sum

# Job -> (sum, what was typed).
KEPT_SUMS: dict[str, tuple[tuple[str, dict[str, str]], ...]] = {
    "1": (
        (
            "misfire-pattern",
            {"counters": "14/11/9/16", "firing_order": "1-3-4-2", "coils": ""},
        ),
        ("road-test-worth", {"once_in": "10", "driven": "31"}),
    ),
}
STUDY_OF = "calliper"
# Each read the same 12 mm pin ten times, taken off and set up anew; in mm.
STUDY: dict[str, tuple[float, ...]] = {
    TECHNICIANS[0]: (12.01, 12.00, 12.01, 12.02, 12.00, 12.01, 12.01, 11.99, 12.01, 12.00),
    TECHNICIANS[1]: (12.01, 12.02, 12.01, 12.01, 12.03, 12.01, 12.00, 12.02, 12.01, 12.02),
}


def keep_sums(teller: Storyteller, key: str, who: str) -> None:
    """Keep the sums that somebody worked out on a job."""
    for sum_id, typed in KEPT_SUMS.get(key, ()):
        teller.do(who, keep_sum, teller.jobs[key], sum_id, work_out(sum_id, typed))


def try_calliper_out(teller: Storyteller, instrument_id: int) -> None:
    """Let two people read one pin in turn, and take their repeatability over."""
    study = None
    for trial in range(10):
        for who in TECHNICIANS:
            place, value = (who, 1, trial + 1), STUDY[who][trial]
            if study is None:
                begun = (instrument_id, "12 mm pin", place, value)
                study = teller.do(who, gauge_actions.begin_study, *begun).made
            else:
                teller.do(who, gauge_actions.add_reading, study, place, value)
    teller.do(TECHNICIANS[0], gauge_actions.use_from_now_on, study)
