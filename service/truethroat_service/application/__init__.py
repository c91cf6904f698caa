"""Use cases: one a file, each turning a validated request into engine calls and the answer into quantities."""
