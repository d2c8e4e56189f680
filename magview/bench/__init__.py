"""The virtual bench: one frozen state, the actions a person can take, and what the pictures show."""
