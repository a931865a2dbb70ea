"""What is due, and how the studio reminds of it."""
