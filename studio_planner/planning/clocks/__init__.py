"""The cure clocks and the air as planning asks them: on whole seconds, on the safe side."""
