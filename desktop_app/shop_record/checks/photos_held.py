"""Photos held against their names by threads of their own, while other things are looked at."""

from __future__ import annotations

from collections.abc import Generator, Iterable
from concurrent.futures import Future, ThreadPoolExecutor
from types import TracebackType

from desktop_app.language import tr
from desktop_app.shop_record.checks.problem import Problem
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.step import Step

SIDE_BY_SIDE = 2  # photos that are read at once
SAID_EACH = 100  # photos
_BRING_BACK = tr(
    "“benchwitness check --mend” brings it back where a backup or a copy has it whole."
)


class PhotosHeld:
    """Reads photos once each, from when they are named on; those not asked for at its end stop."""

    def __init__(self, files: PhotoFiles) -> None:
        self._files = files
        self._readers = ThreadPoolExecutor(SIDE_BY_SIDE)
        self._whole: dict[str, Future[bool | None]] = {}

    def __enter__(self) -> PhotosHeld:
        return self

    def __exit__(
        self,
        _kind: type[BaseException] | None,
        _error: BaseException | None,
        _at: TracebackType | None,
    ) -> None:
        self._readers.shutdown(cancel_futures=True)

    def begin(self, photos: Iterable[str]) -> None:
        """Begin to read photos, said by SHA-256; nothing waits for them yet."""
        for sha256 in photos:
            if sha256 not in self._whole:
                self._whole[sha256] = self._readers.submit(self._files.is_whole, sha256)

    def problems(
        self, photos: Iterable[tuple[str, str]]
    ) -> Generator[Step, None, tuple[list[Problem], int]]:
        """Wait for photos, said by (SHA-256, where it is named); begun or not.

        Return what is wrong where it is named, and how many there were; of photos that are away
        just now only that.
        """
        named: dict[str, list[str]] = {}
        for sha256, where in photos:
            named.setdefault(sha256, []).append(where)
        self.begin(named)
        found: list[Problem] = []
        for number, (sha256, places) in enumerate(named.items()):
            if number % SAID_EACH == 0:
                yield Step(number, len(named), tr("Holding the photos against their hashes"))
            good = self._whole[sha256].result()
            if good is None and (away := self._files.away()) is not None:
                return [Problem(tr("the shared folder"), away.what, False, away.do)], 0
            if good is not True:
                found += [self._problem(sha256, where, good) for where in places]
        return found, len(named)

    def _problem(self, sha256: str, where: str, whole: bool | None) -> Problem:
        photo = self._files.called(sha256)
        what = tr("{photo} was changed after it was taken in.", photo=photo)
        if whole is None:
            what = tr("{photo} is missing.", photo=photo)
        return Problem(where, what, True, _BRING_BACK, photo=sha256)
