"""The kiosk on a tablet: one application, shown in the browsers of paired screens."""
