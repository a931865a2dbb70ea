"""The weigh view: the whole screen for one number at the scale, readable from three metres."""
