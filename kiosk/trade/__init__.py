"""The arithmetic of the trade: pure functions, units in names and types, sources beside values."""
