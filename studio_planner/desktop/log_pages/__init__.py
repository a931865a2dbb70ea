"""The parts of the page of the log: writing down, reading, correcting, weights and tracing."""
