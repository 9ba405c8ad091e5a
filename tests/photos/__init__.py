"""Tests of the way from camera file to web."""
