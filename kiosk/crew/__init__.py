"""The talking crew: an invented evening, played on the real kiosk by itself."""
