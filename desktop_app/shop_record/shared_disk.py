"""A shop whose folder lies on another computer: two computers must not open it at once."""

from __future__ import annotations

import os
import re
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

MOUNTS = Path("/proc/mounts")
# Kinds of file systems that reach over a network; their locks can't be relied on.
NETWORK = frozenset(
    {"nfs", "nfs4", "cifs", "smb3", "smbfs", "9p", "afpfs", "davfs", "ncpfs", "ceph", "glusterfs"}
    | {"fuse.sshfs", "fuse.davfs2", "fuse.glusterfs", "fuse.rclone", "fuse.gvfsd-fuse"}
)


def on_shared_disk(folder: Path) -> ShopTrouble | None:
    """Return what to say where the folder of a shop lies on a network disk; else None."""
    kind = file_system_of(folder)
    if kind not in NETWORK:
        return None
    return ShopTrouble(
        tr(
            "The shop's folder lies on a network disk ({kind}). Two computers must not "
            "open it at once: such disks don't keep them apart, and the record would be "
            "damaged for good.",
            kind=kind,
        ),
        do=tr(
            "Let one computer keep the folder on its own disk and send only backups to this one."
        ),
    )


def file_system_of(folder: Path) -> str:
    """Return the kind of file system a folder lies on, as the system calls it; "" if unknown."""
    path = folder.resolve()
    if os.name == "nt":
        return "smbfs" if path.drive.startswith("\\\\") else ""
    try:
        mounts = MOUNTS.read_text(encoding="utf-8", errors="surrogateescape").splitlines()
    except OSError:
        return ""
    found, longest = "", -1
    for mount in mounts:
        _, at, kind, *_ = (*mount.split(" "), "", "", "")
        at = re.sub(r"\\([0-7]{3})", lambda octal: chr(int(octal[1], 8)), at)
        if path.is_relative_to(at or "?") and len(at) >= longest:
            found, longest = kind, len(at)
    return found
