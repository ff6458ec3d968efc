"""What only one of the databases can do, behind one face."""
