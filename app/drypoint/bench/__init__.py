"""The simulated machine and copper that a rehearsal runs on."""
