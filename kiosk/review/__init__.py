"""What past sessions and laboratory results show: drift, deviations, reports."""
