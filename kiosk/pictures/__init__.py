"""Line drawings of parts and places, described once, drawn as SVG or in terminal cells."""
