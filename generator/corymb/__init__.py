"""Corymb: a floral studio's recipes, photos and orders, built into two sites."""

__version__ = "0.1.0"
