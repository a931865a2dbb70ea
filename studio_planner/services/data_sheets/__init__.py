"""Data sheets: figures read from pasted text, stage times from them, and what they lack."""
