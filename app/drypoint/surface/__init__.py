"""Touches of the copper and the model of its height."""
