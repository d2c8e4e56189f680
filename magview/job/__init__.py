"""The job sheet of a real magneto on a real engine: from cautions to signature, kept, printed, compared."""
