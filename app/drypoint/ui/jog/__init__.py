"""Moving the machine by hand, touching off, and the reference holes."""
