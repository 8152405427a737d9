"""Setting a kiosk up: its site file, asked for on the screen one answer after the other."""
