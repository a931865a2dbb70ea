"""The parts of the page of questions."""
