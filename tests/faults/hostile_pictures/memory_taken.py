"""Takes in the files that are named, and says by how much each raised this program's memory."""

from __future__ import annotations

import sys
import tempfile
from contextlib import suppress
from pathlib import Path

from desktop_app.part_photos.actions import take_in
from desktop_app.part_photos.arrival import arrived
from desktop_app.shop_record.record import create_shop
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON


def most_so_far() -> int:
    """The most memory that this process ever held, in kB."""
    lines = Path("/proc/self/status").read_text(encoding="ascii").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmHWM:"))


def main() -> None:
    """Take them in, one after the other."""
    with tempfile.TemporaryDirectory() as folder:
        shop = create_shop(Path(folder) / "shop", lambda: NOON)
        for name in sys.argv[1:]:
            Path("/proc/self/clear_refs").write_text("5", encoding="ascii")  # the mark starts anew
            before = most_so_far()
            with suppress(ShopTrouble):
                take_in(shop, arrived(Path(name)))
            sys.stdout.write(f"{name} {most_so_far() - before}\n")
        shop.close()


if __name__ == "__main__":
    main()
