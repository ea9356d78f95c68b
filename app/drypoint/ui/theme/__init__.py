"""Colours, type and icons: the look of the window, in one place."""
