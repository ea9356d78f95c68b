"""Drypoint: mill circuit boards on a small, imperfect engraver, and prove the result."""

__version__ = "0.1.0"
