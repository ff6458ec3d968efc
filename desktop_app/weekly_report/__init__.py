"""The Monday Book: what left in a week, what came back, what is still watched, and the workbook.

`week` names weeks as ISO 8601 does, `figures` holds what the week comes to, `pages` says what
stands on each sheet, and `workbook` writes it. The window and the command show the same figures.
"""
