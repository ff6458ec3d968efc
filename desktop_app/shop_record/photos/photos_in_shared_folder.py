"""Photos in a folder that several computers reach: looked at before each whether it is there.

Where the network share is not connected an empty folder lies in its place; a photo that is put
there is seen by nobody once the share is back.
"""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record.photos.photo_files import MARK, PhotoFiles
from desktop_app.shop_record.photos.photo_folder_mark import mark_in, mark_of, of_another
from desktop_app.shop_record.server.server_trouble import PhotosUnknown
from desktop_app.shop_record.trouble import ShopTrouble


class PhotosInSharedFolder(PhotoFiles):
    """Originals in a folder that has the shop's mark; None for a shop of before there were marks.

    What is set aside stays on the same disk: from one to the other no file can be moved.
    """

    def __init__(self, folder: Path, mark: str | None) -> None:
        super().__init__(folder)
        self._mark = mark

    @property
    def home(self) -> Path:
        """The folder whose `trash` takes what is set aside."""
        return self.folder

    def away(self) -> PhotosUnknown | None:
        """Return what to say where the shop's photos can't be reached now; None where they can."""
        found = mark_in(self.folder)
        if found and found != self._mark:
            return of_another(self.folder)
        if found or (self._mark is None and self.folder.is_dir()):
            return None
        do = tr(
            "Is the shared folder connected? If it moved, say where it is now by opening the shop "
            "on its server once more."
        )
        if self._mark:
            known = tr(
                "It is the one whose file {file} begins with {mark}.", file=MARK, mark=self._mark
            )
            do = f"{do} {known}"
        return PhotosUnknown(
            tr("The shared folder of the photos, {folder}, can't be reached.", folder=self.folder),
            do=do,
        )

    def keep(self, content: bytes) -> str:
        """Put the bytes safely into the folder, where it is there, and return their SHA-256."""
        if (away := self.away()) is not None:
            kept = tr("The photo was not saved; the job and what you typed are as they were.")
            raise PhotosUnknown(away.what, kept, away.do)
        return super().keep(content)

    def read(self, sha256: str) -> bytes:
        """Return the original bytes; a ShopTrouble where they or the whole folder can't be read."""
        try:
            return super().read(sha256)
        except ShopTrouble as trouble:
            raise self.away() or trouble from trouble


def photos_shared_in(connection: Connection, folder: Path) -> PhotosInSharedFolder:
    """Return the photos of a record in a shared folder, which may be away.

    Raises PhotosUnknown where the folder is another shop's.
    """
    mark = mark_of(connection)
    if (found := mark_in(folder)) and found != mark:
        raise of_another(folder)
    return PhotosInSharedFolder(folder, mark)
