"""One coach as a network: what flows, what stays, and where."""
