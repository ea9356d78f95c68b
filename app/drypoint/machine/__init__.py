"""The real machine: link, protocol, sender, controller and procedures."""
