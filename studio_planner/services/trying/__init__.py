"""What if: a studio with one thing changed, planned beside the real one and compared."""
