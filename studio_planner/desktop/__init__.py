"""Everything Qt: the windows, and paper through Qt's own writer."""
