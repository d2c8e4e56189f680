"""Learn: the place, and a lesson as a page: a strip of fixed height over the bench's pictures.

Begin reading in `page.py`; what a lesson is and how a step is judged stands in `magview.practice`.
"""
