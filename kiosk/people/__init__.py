"""Who works here: what each may do, their PINs, and what is kept of them beside the journal."""
