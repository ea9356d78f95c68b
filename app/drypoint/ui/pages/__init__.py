"""The pages of the nine steps: values in through setters, wishes out through signals."""
