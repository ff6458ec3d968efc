"""A shop on a server: its address, its password, its roles, its silence and its trouble."""
