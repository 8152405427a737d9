"""A whole procedure walked by a simulated worker, with no screen and no hands."""
