"""The guide: pages, search, and the book as one file. Nothing here knows Qt."""
