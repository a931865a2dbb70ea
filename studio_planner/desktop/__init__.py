"""Everything Qt: the desk's window and what is drawn in it."""
