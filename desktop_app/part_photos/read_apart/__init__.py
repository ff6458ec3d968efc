"""Photos from outside are decoded first in a process of their own, that may break over them.

A picture that was made to break a decoder, or to fill the memory, harms that process alone. It is
started with the first photo, kept for the next ones, and replaced when it broke or was ended.
"""
