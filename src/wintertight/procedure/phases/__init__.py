"""The stretches of a job, one module each."""
