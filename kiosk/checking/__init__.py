"""Everything that can be wrong in a procedure file, each thing with a name, a page and a mend."""
