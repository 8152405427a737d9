"""Figures described once, then drawn as SVG or in the cells of a terminal."""
