"""Journals shipped to a head office, where PostgreSQL verifies them and answers questions."""
