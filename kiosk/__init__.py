"""An offline guidance kiosk for closing and opening a frozen-dessert dispensing freezer."""
