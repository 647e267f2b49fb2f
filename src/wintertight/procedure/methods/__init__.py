"""How each method is worked out, one module each."""
