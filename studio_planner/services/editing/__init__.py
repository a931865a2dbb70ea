"""What a maker can change in a studio: each change a function from one studio to the next."""
