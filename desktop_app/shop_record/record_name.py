"""What tells a shop's folder and where its record is: known without loading what opens one."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pathlib import Path

FILE_NAME = "shop.sqlite"
SERVER_NAME = "server.toml"  # lies there instead where the record is on a server


def is_server_folder(folder: Path) -> bool:
    """Tell whether the shop of a folder is on a server."""
    return (folder / SERVER_NAME).is_file()
