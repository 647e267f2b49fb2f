"""What each kind of fitting adds to a network."""
