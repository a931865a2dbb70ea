"""Puts one chain of coats into the week: starts, spots, hands and joints."""
