"""The append-only, hash-chained table of events, in SQLite."""
