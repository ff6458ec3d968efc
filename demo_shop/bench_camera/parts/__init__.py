"""The parts that can be drawn, one file each, in the part's own frame and in millimetres."""
