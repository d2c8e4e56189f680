"""Models of magneto, engine and installation: frozen, with their files, units and the shipped library.

Here: file models with every check a file must pass; bounded reading, refusals as one sentence, atomic writing;
units and days as people write them; `tr`, through which every word goes that people read. Not here: how anything
behaves. Begin reading in `magneto.py`, then `files.py`.

A file that cannot be used is refused where it is read, by the model, in one sentence. What a file is silent about
is the dangerous or the general case, never a silent assumption. Kinds of file and their endings stand in
`formats.py`: they end in ``.magview.json`` or ``.magview``, and the first line says which kind it is; a plain
``.json`` opens alike when named.
"""
