"""The studio file, its copies, and what comes in and goes out: JSON, room logs, data sheets.

Only this room knows SQLite. Values that come out of it are craft values, already validated.
"""
