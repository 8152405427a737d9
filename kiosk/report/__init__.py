"""Reports on paper, and the same facts as tables: every figure with the journal rows it is from."""
