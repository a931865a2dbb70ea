"""Bottles: what is left, which pour takes it from where, what runs out and when to order."""
