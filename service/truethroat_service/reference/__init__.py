"""Figures from standards and handbooks, kept as cited data files, and the loader that reads and checks them."""
