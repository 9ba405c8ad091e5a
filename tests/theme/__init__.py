"""The theme by itself: templates on invented views; styles, fonts, scripts as files."""
