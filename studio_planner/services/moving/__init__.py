"""Moving pours by hand: what a move would mean, making it, and what came of it."""
