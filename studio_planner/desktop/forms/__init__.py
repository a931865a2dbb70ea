"""Fields to type into, each with its label, its unit and a line for what is wrong."""
