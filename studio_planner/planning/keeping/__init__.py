"""Plans again from a kept plan, with as few pours moved as can be."""
