"""What is cut where, in the board frame, before depth and place are known."""
