"""The class: pages for a pupil's desk, an instructor's set, exercises being written, and a class gathered.

They stand in the place where one practises; who puts them there is `shell`. Begin reading in `room.py`.
"""
