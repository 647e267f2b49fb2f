"""The arithmetic of moving fluid, as plain functions of arrays: one source, run two ways."""
