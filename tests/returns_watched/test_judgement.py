"""What counts as a comeback, the causes, and the chains."""

from __future__ import annotations

import pytest

from desktop_app.returns_watched.judgement import (
    RETURN_CAUSES,
    Chains,
    Judgement,
    ReturnJudged,
    return_cause,
)


def test_four_of_eight_judgements_are_comebacks() -> None:
    assert [j.value for j in Judgement if j.is_comeback] == [
        *("same symptom", "same system", "same part", "from our hands"),
    ]
    assert [j.value for j in Judgement if not j.is_comeback] == [
        *("foretold", "other hands", "unrelated", "cannot tell"),
    ]
    assert all(j.means.endswith(".") for j in Judgement)


def test_fourteen_causes_of_which_two_are_not_ours() -> None:
    assert len({cause.id for cause in RETURN_CAUSES}) == 14
    assert [cause.id for cause in RETURN_CAUSES if not cause.ours] == ["other-use", "new"]
    found = return_cause("fitted-badly")
    assert found is not None
    assert found.words == "fitted badly"
    assert return_cause("bad luck") is None


def chains(*links: tuple[str, str, Judgement]) -> Chains:
    return Chains(ReturnJudged(*link) for link in links)


def test_a_return_of_a_return_hangs_on_the_first_job() -> None:
    made = chains(("a", "b", Judgement.SAME_PART), ("b", "c", Judgement.FROM_OUR_HANDS))
    assert made.chain_of("c") == ("a", "b", "c")
    assert made.chain_of("a") == ("a",)
    assert made.chain_of("z") == ("z",)


@pytest.mark.parametrize("decided", [j for j in Judgement if not j.is_comeback])
def test_what_is_no_comeback_makes_no_chain(decided: Judgement) -> None:
    assert chains(("a", "b", decided)).chain_of("b") == ("b",)


def test_what_came_back_for_a_cause_that_is_not_ours_makes_no_chain() -> None:
    made = Chains(
        (
            ReturnJudged("a", "b", Judgement.SAME_SYMPTOM, "other-use"),
            ReturnJudged("b", "c", Judgement.SAME_SYMPTOM, "fitted-badly"),
        )
    )
    assert made.chain_of("c") == ("b", "c")


def test_a_job_that_came_back_for_two_hangs_on_the_older() -> None:
    made = chains(("a", "c", Judgement.SAME_SYMPTOM), ("b", "c", Judgement.SAME_SYSTEM))
    assert made.chain_of("c") == ("a", "c")


def test_a_circle_of_links_comes_to_an_end() -> None:
    made = chains(("a", "b", Judgement.SAME_PART), ("b", "a", Judgement.SAME_PART))
    assert len(made.chain_of("a")) == 2
