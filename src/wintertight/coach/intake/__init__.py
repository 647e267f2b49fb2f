"""What is asked about a coach, and the card that its answers make."""
