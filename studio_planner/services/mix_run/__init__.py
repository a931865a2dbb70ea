"""A mix at the scale, tap by tap: where it stands, what is kept of it, what the log is told."""
