"""The command line: nothing but wiring, one verb a file."""
