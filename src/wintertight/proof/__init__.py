"""Claims, the evidence they stand on, and the verdict."""
