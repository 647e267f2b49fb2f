"""The coach's card: what this coach has, where it is, and how sure we are of each value."""
