"""What cold does: when a held content is safe, and when it bursts what holds it."""
