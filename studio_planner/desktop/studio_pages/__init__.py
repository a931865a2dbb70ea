"""The sections of the page where a studio is set up."""
