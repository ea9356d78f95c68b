"""Placed, warped and timed: from passes and cuts to the lines a controller runs."""
