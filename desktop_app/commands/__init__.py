"""The same deeds and questions from the shell; a command holds no rules of its own."""
