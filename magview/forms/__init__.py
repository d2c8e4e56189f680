"""Forms for any model: text that people type into a field, read, written back, refused in one sentence.

Here: `Entry`, one field as it is asked for, derived from its model (`spec/fields.py`) and from nothing else; reading
and writing what is typed; limits in words; `draft.py`, values that may be missing or wrong, of which nothing is lost.
Not here: widgets (`ui/kit/forms.py`), pages and their order (the rooms that own them). Begin reading in `entry.py`.
"""
