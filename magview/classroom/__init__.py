"""The class: sets of exercises, one code for everyone, and who needs help; without accounts or servers."""
