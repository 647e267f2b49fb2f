"""Measurements, each as a ratio against a reference in the same run."""
