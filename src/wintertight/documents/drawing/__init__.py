"""Drawings of a coach: isometric pipe drawings in the manner of ISO 6412-2, as SVG."""
