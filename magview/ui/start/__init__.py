"""Place to begin at: the doors to learning, practice and work, and what was worked on lately.

Nothing is done here. Begin reading in `page.py`.
"""
