"""What time, temperature, air and mass do to a mix: numbers in, numbers out.

Inside this room an instant is a float of seconds since 1970-01-01 00:00 UTC, a temperature
is in °C, a stage's duration is in hours, a mass in grams, a film in millimetres.
"""
