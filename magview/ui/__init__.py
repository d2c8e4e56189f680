"""The window. Qt lives here alone; views draw a state and send actions."""
