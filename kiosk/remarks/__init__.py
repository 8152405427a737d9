"""Spoken remarks: recorded on a problem, kept beside the journal, told of in it."""
