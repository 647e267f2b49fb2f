"""Blowing lines out with compressed air: how it flows, what it sweeps, how long a tank lasts."""
