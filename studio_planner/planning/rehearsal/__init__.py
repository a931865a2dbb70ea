"""Rehearsing a plan in simulated weeks: how often its windows and its promises hold."""
