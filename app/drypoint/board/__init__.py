"""Design files in, one `Board` out."""
