"""What water, ice, glycol and ethanol mixtures are: shipped tables, and laws on top of them."""
