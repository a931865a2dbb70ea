"""The pages of the desk, one for each thing that a maker sets up or asks for."""
