"""The shop's instruments: figures, checks, choice, and the study that tries one out."""
