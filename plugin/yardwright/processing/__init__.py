"""Processing provider: one file an algorithm, each reads its parameters, calls and writes."""
