"""Use cases: what the window and the command line do, in the same words."""
