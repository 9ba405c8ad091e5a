"""The theme: templates, styles, small scripts and fonts. MkDocs finds it by this package."""
