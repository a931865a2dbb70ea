"""Parts of the page on which a room, its air, its readings and its shelf are entered."""
