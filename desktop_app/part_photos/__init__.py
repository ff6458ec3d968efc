"""Photos of parts: taken in unchanged, shown upright, two side by side."""
