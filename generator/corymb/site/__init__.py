"""From views to pages, and from pages to two sites that can be served anywhere."""
