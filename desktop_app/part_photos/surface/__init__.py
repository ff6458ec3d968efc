"""How much of a surface has another colour than bare metal."""
