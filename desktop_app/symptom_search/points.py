"""The one score: what each thing that speaks for a past job is worth, in points.

A job's score is the sum of what holds for it:

    its number is named 1000, else its vehicle is named 200
    12 for each same symptom; without any, 3 where a neighbouring symptom is its own
    14 for each same code, and 5 where a code of the same family is its own
    6 where a part kind named is among its own
    3 for each same condition, -3 for each that is said never to bring it on
    the words: 10 shared out among them by their rarity, each share times its impact (weights.py;
      about 1 in a usual field) and times its fit (1, joined or parted 0.9, near 0.6)
    settled, and nothing was wrong 1, came back -1

Only what speaks for it lets a job be found; conditions and what became of it order what is found.
Values are our own. They are counted in whole hundred-thousandths, so that every way of adding
them up gives the same.
"""

from __future__ import annotations

JOB_NUMBER = 1000
NAMED_CAR = 200
SAME_CODE = 14
SAME_SYMPTOM = 12
NEAR_SYMPTOM = 3
RELATED_CODE = 5
SAME_PART = 6
SAME_CONDITION = 3
NEVER_CONDITION = -3
ALL_WORDS = 10
SEEN_FINE = 1
CAME_BACK = -1

WHOLE_FIT, JOINED_FIT, NEAR_FIT = 100, 90, 60  # in hundredths

UNIT = 100_000  # what one point is counted as
