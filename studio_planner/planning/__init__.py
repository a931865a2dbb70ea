"""From a studio to a plan: build the problem, plan quickly, check, explain."""
