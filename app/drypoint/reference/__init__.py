"""Reference holes: where the board is, and how well that is known."""
