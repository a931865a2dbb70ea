"""The exact model of a plan: what the solver is asked, and what its answer means."""
