"""Handbook and shop rules that no one standard owns."""
