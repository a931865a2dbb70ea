"""What to weigh, in how many cups, in what order, and what becomes of the rest."""
