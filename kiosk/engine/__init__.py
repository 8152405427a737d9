"""The rules: pure functions over a plan, a state and a command. No clock, no file, no screen."""
