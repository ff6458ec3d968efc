"""The bench's arithmetic: sums a shop does beside the parts, each with its doubt and its limit.

`sums_offered` lists them with what is asked for, and works one out from typed texts.
"""
