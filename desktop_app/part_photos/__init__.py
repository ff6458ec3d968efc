"""Part photos: taken in and kept as they came, shown small, and shown old beside new."""

import os

# OpenCV reads this once, when it is loaded. No file is opened with it; should one ever be,
# no bomb goes off.
os.environ.setdefault("OPENCV_IO_MAX_IMAGE_PIXELS", "100000000")
