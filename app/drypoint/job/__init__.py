"""The job file and the journal of its runs."""
