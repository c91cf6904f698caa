"""What every capability stands on: quantities and units, answers, and faults."""
