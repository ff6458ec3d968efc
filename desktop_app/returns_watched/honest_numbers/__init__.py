"""The arithmetic of comebacks: rates and their doubt, curves, comparisons, charts by week."""
