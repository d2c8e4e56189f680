"""How they behave: numpy arrays in, arrays or small frozen results out. No files, no Qt, no clock."""
