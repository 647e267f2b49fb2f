"""What to do to a coach, in which order, and what comes of it."""
