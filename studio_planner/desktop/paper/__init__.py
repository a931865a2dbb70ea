"""Sheets on paper: drawn in black, page by page, into a PDF, onto a printer or a screen."""
