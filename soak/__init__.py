"""Long sweeps that no test run has time for: ``make soak``."""
