"""Plain questions that are answered at once from the open studio, with the reason."""
