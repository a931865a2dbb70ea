"""Calendar files: the plan on a phone, in events that keep their names."""
