"""Procedure files: what they may say, how they are read, and how they are fitted to a machine."""
