"""What a maker can do: commands, questions, reminders, sheets; and the ports they need."""
