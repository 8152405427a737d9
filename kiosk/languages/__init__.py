"""The kiosk's own words, one Fluent message file per language."""
