"""From a checkout and a bare Python to a running program; the standard library only."""
