"""What is done at the machine, step by step: each a function of a workplace."""
