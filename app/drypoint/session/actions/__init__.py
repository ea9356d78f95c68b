"""What is done at the machine, step by step: measure, run, find the board, prove."""
