"""Sheets for paper as plain values: what is on them, in words; who draws them is elsewhere."""
