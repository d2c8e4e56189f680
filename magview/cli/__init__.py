"""The command line: one thin module for each group of commands.

What people read goes through the rooms below; nothing is computed here. Begin reading in `main.py`.
"""
