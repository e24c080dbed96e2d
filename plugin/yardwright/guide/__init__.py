"""What goes onto the pages of a guide: windows on the ground and where each symbol falls in them."""
