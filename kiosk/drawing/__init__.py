"""Procedures on paper: a picture of the conditions, and a sheet for the wall."""
