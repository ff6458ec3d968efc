"""The process that decodes photos: what it answers, what it may take, how far it is believed."""

from __future__ import annotations

import json
import os
import runpy
import signal
import sys
import threading
from collections.abc import Iterator
from io import BytesIO
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest
import zxingcpp
from PIL import Image
from zxingcpp import BarcodeFormat as Form

from desktop_app.part_photos import picture_opened
from desktop_app.part_photos.capture_time import capture_time
from desktop_app.part_photos.codes.seen_code import read_back
from desktop_app.part_photos.photo_limits import MOST_BYTES, MOST_NOTES
from desktop_app.part_photos.photo_trouble import Unfit
from desktop_app.part_photos.picture_kind import JPEG, PNG
from desktop_app.part_photos.read_apart import photo_reader, reading_process
from desktop_app.part_photos.read_apart.messages import Garbled, receive, send
from desktop_app.part_photos.read_apart.photo_reader import PhotoReader
from desktop_app.part_photos.read_apart.reading_process import answer
from desktop_app.part_photos.upright_picture import open_picture, orientation
from tests.part_photos.bench_pictures import ENDINGS, encoded, exif, noisy, picture
from tests.part_photos.code_scenes import VIN, bars, label, photo_of
from tests.part_photos.test_intake import chunk, claimed_png

resource = pytest.importorskip("resource")  # not on every system

OPENED = {"wanted": "opened", "kind": JPEG}
TAKEN = exif(6, "2026:11:13 16:40:05", "+01:00")
WHOLE = encoded(noisy(90, 60), "JPEG", TAKEN)


def unfit(content: bytes, kind: str = JPEG, wanted: str = "opened") -> str:
    """What is said of a photo that is none, in one line."""
    said, nothing = answer({"wanted": wanted, "kind": kind, "size": 80}, content)
    assert nothing == b""
    return f"{said['unfit']} {said['do']}"


@pytest.mark.parametrize("kind", ENDINGS)
def test_a_whole_photo_is_answered_with_its_size_its_time_and_a_small_one(kind: str) -> None:
    content = encoded(noisy(300, 200), kind, TAKEN)
    said, small = answer({"wanted": "opened", "kind": ENDINGS[kind]}, content)
    assert said == {"width": 200, "height": 300, "taken_at": "2026-11-13T16:40:05+01:00"}
    assert max(open_picture(small, JPEG).size) == 256
    _, smaller = answer({"wanted": "thumbnail", "kind": ENDINGS[kind], "size": 80}, content)
    assert max(open_picture(smaller, JPEG).size) == 80


@pytest.mark.parametrize("turn", [0, 60])
def test_the_codes_of_a_photo_are_answered_however_small_they_are(turn: float) -> None:
    content = encoded(photo_of(label(bars(VIN, Form.Code128)), turn=turn))
    _, listed = answer({"wanted": "codes", "kind": JPEG}, content)
    codes = read_back(listed)
    assert codes is not None
    assert [code.text for code in codes] == [VIN]
    assert read_back(answer({"wanted": "codes", "kind": JPEG}, WHOLE)[1]) == ()


def codes(photo: Image.Image) -> list[str]:
    """The codes that are read in a photo."""
    seen = read_back(answer({"wanted": "codes", "kind": JPEG}, encoded(photo))[1])
    return [code.text for code in seen or ()]


def test_a_code_of_the_trade_is_answered_as_it_is_printed() -> None:
    made = zxingcpp.create_barcode("(01)09506000134352", Form.DataMatrix, gs1=True)
    drawn = Image.fromarray(np.array(zxingcpp.write_barcode_to_image(made, scale=8)))
    assert codes(label(drawn).convert("RGB")) == ["(01)09506000134352"]


def test_small_bars_are_looked_for_in_the_whole_photo() -> None:
    large = Image.new("RGB", (4000, 1700), (90, 90, 90))
    large.paste(photo_of(label(bars("4711-22 B", Form.Code128)), across=420), (1000, 300))
    assert codes(large) == ["4711-22 B"]


def test_what_is_no_whole_photo_is_answered_with_why_and_what_to_do() -> None:
    assert unfit(WHOLE[:-500]).startswith("the picture is damaged or incomplete. Send it again")
    assert unfit(b"\xff\xd8\xff", wanted="codes").startswith("the picture is damaged")
    assert unfit(b"\xff\xd8\xff", wanted="thumbnail").startswith("A photo in the shop's folder")
    rows_alone = encoded(noisy(90, 60), "PNG").partition(b"\x00\x00\x00\x00IEND")[0]
    assert unfit(rows_alone, PNG).startswith("the picture is damaged or incomplete.")


@pytest.mark.parametrize("wanted", ["opened", "codes"])
@pytest.mark.parametrize(
    ("size", "said"),
    [((20_001, 1), "it is 20,001 × 1 pixels"), ((65_000, 65_000), "the picture is damaged")],
)
def test_a_picture_too_large_is_refused_once_more(
    size: tuple[int, int], said: str, wanted: str
) -> None:
    assert unfit(claimed_png(*size), PNG, wanted).startswith(said)


def test_notes_that_swell_are_refused_before_the_pixels() -> None:
    whole = encoded(picture(), "PNG")
    notes = chunk(b"eXIf", b"MM\x00*" + bytes(MOST_NOTES))
    before_rows = whole.index(b"IDAT") - 4
    said = unfit(whole[:before_rows] + notes + whole[before_rows:], PNG)
    assert "the camera's notes in it take" in said
    assert said.endswith("Open it in a picture program and save it as JPEG.")


def test_a_picture_that_takes_all_memory_is_refused_as_such(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def full(*_asked: object) -> bytes:
        raise MemoryError

    monkeypatch.setattr(picture_opened, "small_copy", full)
    assert unfit(WHOLE).startswith("reading it takes more memory than any photo does.")


def test_notes_that_cannot_be_read_say_no_time_and_leave_the_photo_as_it_is_stored() -> None:
    start = WHOLE.index(b"Exif\x00\x00") + 6
    spoiled = WHOLE[:start] + b"\xff" * 12 + WHOLE[start + 12 :]
    assert capture_time(open_picture(spoiled, JPEG)) is None
    said, _ = answer(OPENED, spoiled)
    assert said == {"width": 90, "height": 60, "taken_at": None}
    file = BytesIO()
    noisy(90, 60).save(file, "PNG")
    words = chunk(b"tEXt", b"Raw profile type exif\x00\nexif\n 2\nno figures\n")
    odd = file.getvalue()[:33] + words + file.getvalue()[33:]
    assert capture_time(open_picture(odd, PNG)) is None
    assert orientation(open_picture(odd, PNG)) == 1
    said, _ = answer({"wanted": "opened", "kind": PNG}, odd)
    assert said == {"width": 90, "height": 60, "taken_at": None}


def test_a_message_is_heard_as_it_was_said_until_the_end() -> None:
    stream = BytesIO()
    send(stream, {"wanted": "opened"}, b"\x00\nbytes")
    send(stream, {"wanted": "codes"})
    stream.seek(0)
    assert receive(stream, 10) == ({"wanted": "opened"}, b"\x00\nbytes")
    assert receive(stream, 10) == ({"wanted": "codes"}, b"")
    assert receive(stream, 10) is None


@pytest.mark.parametrize(
    "heard",
    [
        *(b"no JSON\n", b"[]\n", b"{}\n", b'{"bytes": null}\n', b'{"bytes": "x"}\n'),
        *(b'{"bytes": -1}\n', b'{"bytes": 11}\n' + bytes(11), b'{"bytes": 5}\nshor'),
        *(b"[" * 9_999, b"\xff\xfe\n"),
    ],
)
def test_what_is_no_message_is_never_taken_for_one(heard: bytes) -> None:
    with pytest.raises(Garbled):
        receive(BytesIO(heard), 10)


@pytest.fixture
def limits(monkeypatch: pytest.MonkeyPatch) -> dict[int, tuple[int, int]]:
    """What a process takes from itself; nothing of it is taken from the tests."""
    taken: dict[int, tuple[int, int]] = {}
    monkeypatch.setattr(resource, "setrlimit", taken.__setitem__)
    return taken


def test_the_process_may_write_no_file_and_take_no_more_than_a_photo_needs(
    limits: dict[int, tuple[int, int]],
) -> None:
    reading_process.limit_myself()
    assert limits == {
        resource.RLIMIT_AS: (reading_process.MOST_MEMORY,) * 2,
        resource.RLIMIT_FSIZE: (0, 0),
        resource.RLIMIT_CORE: (0, 0),
    }
    reading_process.limit_this_photo()
    used = resource.getrusage(resource.RUSAGE_SELF)
    spent = int(used.ru_utime + used.ru_stime)
    soft, _ = limits[resource.RLIMIT_CPU]
    assert 0 <= spent + reading_process.MOST_CPU_SECONDS - soft <= 2


def test_a_system_without_such_limits_reads_photos_too(
    limits: dict[int, tuple[int, int]], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "resource", None)
    reading_process.limit_myself()
    reading_process.limit_this_photo()
    assert limits == {}


@pytest.fixture
def own_output() -> Iterator[None]:
    """Give the tests their standard output back."""
    before = os.dup(1)
    yield
    os.dup2(before, 1)
    os.close(before)


@pytest.mark.usefixtures("own_output")
def test_it_answers_until_nobody_asks_and_what_a_decoder_prints_is_no_answer(
    limits: dict[int, tuple[int, int]],
    monkeypatch: pytest.MonkeyPatch,
    capfdbinary: pytest.CaptureFixture[bytes],
) -> None:
    asked = BytesIO()
    send(asked, OPENED, WHOLE)
    send(asked, OPENED, WHOLE[:100])
    asked.seek(0)
    ignored: list[object] = []
    monkeypatch.setattr(signal, "signal", lambda *one: ignored.append(one))
    monkeypatch.setattr(sys, "stdin", SimpleNamespace(buffer=asked))
    monkeypatch.delitem(sys.modules, reading_process.__name__)
    runpy.run_module(reading_process.__name__, run_name="__main__")
    os.write(1, b"a decoder prints")
    heard = capfdbinary.readouterr()
    answers = BytesIO(heard.out)
    first, second = receive(answers, MOST_BYTES), receive(answers, MOST_BYTES)
    assert first is not None
    assert second is not None
    assert (first[0]["width"], "unfit" in second[0]) == (60, True)
    assert answers.read() == b""
    assert heard.err.endswith(b"a decoder prints")
    assert ignored == [(signal.SIGINT, signal.SIG_IGN)]
    assert resource.RLIMIT_AS in limits


class Answers:
    """A process that gives one answer to whatever it is asked."""

    pid = 4711

    def __init__(self, said: bytes) -> None:
        self.stdin, self.stdout = BytesIO(), BytesIO(said)
        self.killed = 0

    def poll(self) -> int | None:
        """Return None: it runs."""
        return None

    def kill(self) -> None:
        """Note that it was ended."""
        self.killed += 1

    def wait(self) -> None:
        """Return at once."""


def said(head: dict[str, Any], content: bytes = b"") -> bytes:
    """A message as the process says it."""
    stream = BytesIO()
    send(stream, head, content)
    return stream.getvalue()


@pytest.fixture
def processes(monkeypatch: pytest.MonkeyPatch) -> list[Answers]:
    """The processes that are started, the first one first."""
    waiting: list[Answers] = []
    monkeypatch.setattr(photo_reader, "own_process", lambda *_a, **_k: waiting[-1])
    return waiting


SMALL = encoded(picture())


@pytest.mark.parametrize(
    ("head", "small"),
    [
        ({"width": -1, "height": 60, "taken_at": None}, SMALL),
        ({"width": "9", "height": 60, "taken_at": None}, SMALL),
        ({"width": 90, "height": 100_000_000, "taken_at": None}, SMALL),
        ({"width": 90, "height": 60, "taken_at": None}, b"no picture"),
        ({"width": 90, "height": 60, "taken_at": None}, encoded(picture(300, 40))),
        ({"width": 90, "height": 60, "taken_at": "yesterday"}, SMALL),
        ({"width": 90, "height": 60, "taken_at": 5}, SMALL),
    ],
)
def test_nothing_that_the_process_says_is_taken_for_granted(
    processes: list[Answers], head: dict[str, Any], small: bytes
) -> None:
    processes.append(Answers(said(head, small)))
    with pytest.raises(Unfit, match="the reader broke over it"):
        PhotoReader().opened(WHOLE, JPEG)
    assert processes[0].killed == 1
    processes.append(Answers(said({"width": 90, "height": 60, "taken_at": None}, SMALL)))
    assert PhotoReader().opened(WHOLE, JPEG).thumbnail == SMALL


def test_codes_that_are_none_and_a_silence_are_refused_and_end_the_process(
    processes: list[Answers],
) -> None:
    for heard in (said({}, json.dumps("no list").encode()), b"", b"not JSON\n"):
        processes.append(Answers(heard))
        reader = PhotoReader()
        assert reader.process_id() is None
        with pytest.raises(Unfit, match="the reader broke over it"):
            reader.codes(WHOLE, JPEG)
        assert processes[-1].killed == 1
        assert reader.process_id() is None
    processes.append(Answers(said({}, b"[]")))
    reader = PhotoReader()
    assert reader.codes(WHOLE, JPEG) == ()
    assert (reader.process_id(), processes[-1].killed) == (4711, 0)


def test_a_photo_that_takes_too_long_ends_the_process(processes: list[Answers]) -> None:
    stopped = threading.Event()

    class Silent(Answers):
        def kill(self) -> None:
            stopped.set()

    silent = Silent(b"")
    silent.stdout = SimpleNamespace(  # type: ignore[assignment]
        readline=lambda _most: stopped.wait(20) and b"", close=lambda: None
    )
    processes.append(silent)
    with pytest.raises(Unfit, match=r"it takes longer than 0\.01 seconds\.") as refused:
        PhotoReader(most_seconds=0.01).opened(WHOLE, JPEG)
    assert refused.value.do.startswith("Open it in a picture program")


def test_large_pipes_are_done_without_and_no_reader_at_all_is_said(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    sizes: list[int] = []
    works = Answers(said({}, b"small"))

    def scarce(_module: str, *, pipesize: int, **_more: object) -> Answers:
        sizes.append(pipesize)
        if pipesize != -1:
            raise PermissionError("too many pages of pipes")
        return works

    monkeypatch.setattr(photo_reader, "own_process", scarce)
    assert PhotoReader().thumbnail(WHOLE, JPEG, 80) == b"small"
    assert sizes[-1] == -1

    def none(*_asked: object, **_more: object) -> Answers:
        raise OSError(11, "resource temporarily unavailable")

    monkeypatch.setattr(photo_reader, "own_process", none)
    with pytest.raises(Unfit, match=r"starts no reader \(resource temporarily unavailable\)"):
        PhotoReader().opened(WHOLE, JPEG)
