"""The views of the pages for learning, on the staff's site alone."""
