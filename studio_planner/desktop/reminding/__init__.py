"""Reminding while the window is open, or in the tray: the tick, the means, the answers."""
