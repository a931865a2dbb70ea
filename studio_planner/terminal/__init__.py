"""The command line: one module per command, and the tables they print."""
