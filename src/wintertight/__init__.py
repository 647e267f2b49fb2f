"""Wintertight: what is left in each part of a coach, and is it safe at this temperature?"""

__version__ = "0.1.0"
