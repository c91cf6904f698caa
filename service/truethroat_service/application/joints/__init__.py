"""What several capabilities share about joints: metals, rule sets, seams, grooves, sections and loads."""
