"""How files are written, kept and shared, so that nobody ever takes half of one for a whole."""
