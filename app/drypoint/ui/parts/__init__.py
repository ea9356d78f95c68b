"""Building blocks of pages and panels."""
