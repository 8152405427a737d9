"""The arithmetic of the trade as questions and answers: the same by voice, touch and command."""
