"""All the visits of a shop put to the rules of returns at once, in columns."""
