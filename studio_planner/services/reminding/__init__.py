"""Reminders: made of the plan, kept until they are acknowledged, told by every means."""
