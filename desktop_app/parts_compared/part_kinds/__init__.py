"""The kinds of parts: what is measured and looked at on each, where they are read and changed."""
