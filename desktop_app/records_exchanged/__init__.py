"""The shop's jobs brought in from spreadsheets, and everything written out again."""
