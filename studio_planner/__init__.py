"""Plans the coats of two-part epoxy that a small studio can really pour this week."""
