"""The setup wizard for a new job."""
