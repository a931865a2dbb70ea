"""Ways to reach the maker outside the window: notices, sound, the system's scheduler."""
