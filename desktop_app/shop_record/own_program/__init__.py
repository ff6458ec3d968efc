"""The program itself: its files, its processes, its log and its licences."""
