"""What is waited for: taken once, told where it failed, let go where nobody wants it any more."""

from __future__ import annotations

import threading

import pytest

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.waited import Waited
from tests.shop_record.backed_up import through


def test_what_came_belongs_to_who_takes_it() -> None:
    gone: list[str] = []
    waited = Waited(lambda: "a shop", gone.append)
    assert through(waited.steps("Waiting")) is waited
    assert waited.take() == "a shop"
    waited.give_up()
    assert gone == []


def test_what_came_and_nobody_took_is_let_go() -> None:
    gone: list[str] = []
    waited = Waited(lambda: "a shop", gone.append)
    through(waited.steps("Waiting"))
    waited.give_up()
    waited.give_up()
    assert gone == ["a shop"]


def test_what_comes_after_all_is_let_go_too() -> None:
    gone, go_on = threading.Event(), threading.Event()

    def slow() -> str:
        go_on.wait(30)
        return "a shop"

    waited = Waited(slow, lambda _: gone.set())
    steps = waited.steps("Waiting")
    assert next(steps).words == "Waiting"
    steps.close()  # nobody waits for it
    waited.give_up()
    go_on.set()
    assert gone.wait(30)


def test_trouble_is_raised_for_who_takes_and_a_mistake_at_once() -> None:
    def refuse() -> str:
        raise ShopTrouble("The server knows no tuuli.")

    waited = Waited(refuse, print)
    through(waited.steps("Waiting"))
    with pytest.raises(ShopTrouble, match="knows no tuuli"):
        waited.take()

    def mistake() -> str:
        raise KeyError("tuuli")

    with pytest.raises(KeyError):
        through(Waited(mistake, print).steps("Waiting"))
