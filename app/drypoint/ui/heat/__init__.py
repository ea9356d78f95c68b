"""The copper's height as a picture."""
