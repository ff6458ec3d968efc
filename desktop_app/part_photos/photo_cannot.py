"""What a photo can't give, said to the person who took it."""

from __future__ import annotations

from desktop_app.shop_record.trouble import ShopTrouble


class PhotoCannot(ShopTrouble):
    """A photo that can't be measured in or aligned: why, and how to take a better one."""
