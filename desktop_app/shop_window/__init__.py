"""The frame: the main window, its look, the desk that deeds go through, errands, fields, signs."""
