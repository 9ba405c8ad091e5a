"""The drawings that the sites show: which there are, who draws them, and where they are kept."""
