"""What the page of pieces is made of: the blank, the stack in section, the coat, photos."""
