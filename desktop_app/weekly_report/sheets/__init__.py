"""What stands on each sheet of the weekly workbook, one file a sheet."""
