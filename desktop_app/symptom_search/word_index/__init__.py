"""The word index: every past job's words and facts as arrays, scored all at once."""
