"""The shop's record: database, history, photo files, and the one door for all writing.

Everything that is kept passes through a deed: one transaction, one entry in the history, and a
reverse that makes it undone again. Nothing else in the program writes.
"""
