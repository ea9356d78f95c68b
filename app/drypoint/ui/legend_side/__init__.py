"""The legend by laser in the window."""
