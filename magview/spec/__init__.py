"""What a magneto, an engine and an installation are: frozen models, files, units, the shipped library."""
