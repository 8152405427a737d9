"""The proof that no path goes around a safety hold, and the judge that it leans on."""
