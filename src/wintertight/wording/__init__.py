"""Sentences: keys and parameters of the lower layers, said in a language."""
