"""Working on the timeline: pours moved by hand, pinned, let go, and what comes of it."""
