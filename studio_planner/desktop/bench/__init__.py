"""The bench view: the whole screen for the next thing to do, readable from three metres."""
