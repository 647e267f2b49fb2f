"""What a record tells beyond what it says: what probably went wrong, and what the coach is like."""
