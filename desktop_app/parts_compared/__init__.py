"""Part kinds, readings of a removed part and its replacement, and what follows from them."""
