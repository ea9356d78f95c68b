"""RS-274 lines: reading and writing."""
