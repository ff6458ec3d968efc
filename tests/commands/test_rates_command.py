"""`rates` keeps its contract: whom it counts, what it hides, and what it says."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import new_place
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Person
from desktop_app.returns_watched.kind_windows import Promise
from desktop_app.returns_watched.window_actions import promise_of_shop
from tests.watched_shop import job, judge_return, vehicle

MISFIRE = {"symptoms": ["misfire"], "codes": ["P0300"], "kinds": ["distributor-rotor"]}
FIELDS = [
    *("name", "jobs", "settled", "open", "waiting", "lost_sight", "not_ours", "cannot_tell"),
    *("comebacks", "rate", "low", "high", "expected", "observed_over_expected", "note"),
]


class Rates:
    """Asks for rates of one shop, and keeps what was printed."""

    def __init__(self, place: Path, capsys: pytest.CaptureFixture[str]) -> None:
        self._place = place
        self._capsys = capsys

    def said(self, *words: str) -> tuple[int, str, str]:
        """Run the command and return its status and what it printed."""
        asked = ["rates", "--shop", str(self._place), *words]
        status = run(asked, lambda _folder: 0, lambda _folder, _picture: None)
        captured = self._capsys.readouterr()
        return status, captured.out, captured.err

    def json(self, by: str, *words: str, today: str = "2026-11-16") -> dict[str, Any]:
        """Return the JSON document."""
        status, out, err = self.said("--by", by, "--today", today, "--json", *words)
        assert (status, err) == (0, "")
        found: dict[str, Any] = json.loads(out)
        return found

    def group(self, by: str, name: str, *words: str, today: str = "2026-11-16") -> dict[str, Any]:
        """Return the one group of that name."""
        (group,) = (g for g in self.json(by, *words, today=today)["groups"] if g["name"] == name)
        return group


@pytest.fixture(scope="module")
def place(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop where Ada's car came back and was judged, and Bo's waits for a judgement.

    J-1 came back as J-2 after 30 days, J-3 as J-4 after 20, which nobody has judged; J-5 stayed
    away. J-6 has no correction, J-7 no cause that was found, J-8 was not handed over.
    """
    folder = tmp_path_factory.mktemp("rates") / "shop"
    record = new_place(folder, lambda: datetime(2026, 11, 16, 12, tzinfo=UTC))
    with record.deed("People") as deed:
        ada, bo = deed.add(Person, name="Ada"), deed.add(Person, name="Bo")
    cars = [vehicle(record, plate=f"TIN {n}") for n in range(1, 5)]
    first = job(record, cars[0], "J-1", "2026-06-01", "2026-06-01", technician_id=ada, **MISFIRE)
    second = job(record, cars[0], "J-2", "2026-07-01", "2026-07-02", technician_id=bo, **MISFIRE)
    job(record, cars[1], "J-3", "2026-06-10", "2026-06-10", technician_id=bo, **MISFIRE)
    job(record, cars[1], "J-4", "2026-06-30", None, technician_id=bo, **MISFIRE)
    job(record, cars[2], "J-5", "2026-09-01", "2026-09-01", system="brakes")
    job(record, cars[3], "J-6", "2026-03-01", "2026-03-01", technician_id=ada, correction=" \n")
    job(record, cars[3], "J-7", "2026-04-01", "2026-04-01", technician_id=ada, cause_found=0)
    job(record, cars[3], "J-8", "2026-05-01", None, technician_id=ada)
    judge_return(record, first, second, "same symptom")
    with record.deed("Parts") as deed:
        for supplier, kind, fitted in (
            (" North  Parts", "cap", 1),
            ("north parts", "lead", 1),
            ("Mill", "coil", 0),
        ):
            deed.add(
                Pair,
                job_id=second,
                supplier=supplier,
                part_kind=kind,
                fitted=fitted,
                origin="used" if kind == "cap" else None,
            )
    record.close()
    return folder


@pytest.fixture
def rates(place: Path, capsys: pytest.CaptureFixture[str]) -> Rates:
    return Rates(place, capsys)


def test_by_technician(rates: Rates) -> None:
    found = rates.json("technician")
    assert list(found) == ["window", "groups", "curve"]
    assert found["window"] == {
        "days": 90, "miles": 3000, "rule": "first", "today": "2026-11-16",
    }  # fmt: skip
    groups = {group["name"]: group for group in found["groups"]}
    assert set(groups) == {"Ada", "Bo", "not said"}
    assert all(list(group) == FIELDS for group in groups.values())
    ada, bo, nobody = groups["Ada"], groups["Bo"], groups["not said"]
    assert (ada["jobs"], ada["settled"], ada["comebacks"], ada["rate"]) == (1, 1, 1, 1.0)
    assert ada["low"] == pytest.approx(0.2065493144)
    # J-3 waits; J-2 was settled without a comeback.
    assert (bo["jobs"], bo["settled"], bo["waiting"], bo["comebacks"]) == (2, 1, 1, 0)
    assert (nobody["open"], nobody["settled"], nobody["rate"], nobody["expected"]) == (
        1, 0, None, None,
    )  # fmt: skip
    # Where nothing is expected, the note says why.
    few = "too few jobs to tell; too few others did the same kind of work"
    assert (ada["note"], bo["note"], nobody["note"]) == (few, few, "no window is over yet")


def test_expected_of_such_work(rates: Rates) -> None:
    # Not twenty other jobs are settled, so that there is nothing to compare with.
    ada = rates.group("technician", "Ada")
    assert (ada["expected"], ada["observed_over_expected"]) == (None, None)
    rotor = rates.group("part-kind", "distributor-rotor")
    assert (rotor["settled"], rotor["expected"]) == (2, None)


def test_the_curve(rates: Rates) -> None:
    # J-3 was well until the visit of day 20 that nobody has judged.
    assert rates.json("system")["curve"] == {
        "days": [30],
        "at_risk": [3],
        "events": [1],
        "came_back": [pytest.approx(1 / 3)],
        "low": [pytest.approx(0.0548, abs=1e-4)],
        "high": [pytest.approx(0.9459, abs=1e-4)],
    }


def test_by_supplier_only_fitted_parts_count(rates: Rates) -> None:
    groups = {g["name"]: g["jobs"] for g in rates.json("supplier")["groups"]}
    assert groups == {"North Parts": 1, "not said": 3}
    kinds = {g["name"]: g["jobs"] for g in rates.json("part-kind")["groups"]}
    assert kinds == {"distributor-rotor": 3, "cap": 1, "lead": 1, "not said": 1}


def test_by_symptom_and_system(rates: Rates) -> None:
    symptoms = {g["name"]: g["jobs"] for g in rates.json("symptom")["groups"]}
    assert symptoms == {"misfire": 3, "not said": 1}
    systems = {g["name"]: g["jobs"] for g in rates.json("system")["groups"]}
    assert systems == {"ignition": 3, "brakes": 1}


def test_by_where_the_part_comes_from_and_by_what_the_comparison_said(rates: Rates) -> None:
    # The unfitted coil and the parts without a word on them say nothing.
    origins = {g["name"]: g["jobs"] for g in rates.json("part-origin")["groups"]}
    assert origins == {"used": 1, "not said": 3}
    # Nothing was measured anywhere.
    verdicts = {g["name"]: g["jobs"] for g in rates.json("verdict")["groups"]}
    assert verdicts == {"not compared": 4}
    _, out, _ = rates.said("--by", "verdict", "--today", "2026-11-16")
    assert "Comparing is no experiment" in out


def test_today_hides_what_came_later(rates: Rates) -> None:
    # On 30 June J-4 is in the shop, J-2 is still to come.
    found = rates.json("system", today="2026-06-30")
    (group,) = found["groups"]
    assert (group["jobs"], group["open"], group["waiting"]) == (2, 1, 1)
    curve = found["curve"]
    assert (curve["events"], curve["came_back"], curve["low"]) == ([0], [0.0], [0.0])
    # A comeback counts among the settled only when its window would have been over.
    assert rates.group("technician", "Ada", today="2026-08-30")["settled"] == 0
    assert rates.group("technician", "Ada", today="2026-08-31")["comebacks"] == 1


def test_since_and_until_are_days_of_hand_over(rates: Rates) -> None:
    def counted(*words: str) -> int:
        return sum(group["jobs"] for group in rates.json("system", *words)["groups"])

    assert counted() == 4
    assert counted("--since", "2026-06-10") == 3
    assert counted("--since", "2026-06-11", "--until", "2026-07-02") == 1
    assert counted("--until", "2026-06-01") == 1
    # What came of a job is told whenever it came.
    assert rates.group("technician", "Ada", "--until", "2026-06-01")["comebacks"] == 1


def test_the_same_facts_for_a_person(rates: Rates) -> None:
    status, out, err = rates.said("--by", "technician", "--today", "2026-11-16")
    assert (status, err) == (0, "")
    # Of so few no rate is printed: who reads in haste takes any figure for one.
    assert (
        "Ada: 1 job, 0 open, 0 waiting; of 1 settled 1 came back. Too few jobs to tell: anything "
        "from 21% to 100%.\n"
    ) in out
    assert "not said: 1 job, 1 open, 0 waiting; no window is over yet." in out
    assert "No news is not good news" in out
    status, out, _ = rates.said("--by", "technician", "--until", "2020-01-01")
    assert out == "No job was handed over with a cause and a correction in that time.\n"


@pytest.mark.parametrize(
    "words",
    [
        (),
        ("--by", "colour"),
        ("--by", "system", "--since", "June"),
        ("--by", "system", "--until", "2026-6-1"),
        ("--by", "system", "--today", "2026-02-30"),
        ("--by", "system", "--since", "2026-07-02", "--until", "2026-07-01"),
    ],
)
def test_bad_words_are_refused_in_one_line(rates: Rates, words: tuple[str, ...]) -> None:
    status, out, err = rates.said(*words, "--json")
    assert (status, out, err.count("\n")) == (2, "", 1)


def test_the_window_is_said_as_the_shop_says_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    record = new_place(tmp_path / "shop", lambda: datetime(2026, 11, 16, 12, tzinfo=UTC))
    job(record, vehicle(record), "J-1", "2026-06-01", "2026-06-01")
    said = []
    for promise in (Promise(miles=3000), Promise(months=3, miles=3000)):
        promise_of_shop(record, promise)
        said.append(Rates(tmp_path / "shop", capsys).said("--by", "system")[1])
    record.close()
    assert "The shop's window: 3,000 miles; a job can carry its own." in said[0]
    assert "The shop's window: 3 calendar months or 3,000 miles, whichever ends first;" in said[1]
