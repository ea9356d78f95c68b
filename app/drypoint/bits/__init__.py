"""Cutters: their shape, speeds and wear."""
