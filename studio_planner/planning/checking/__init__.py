"""The checker's parts: it shares nothing with the planners but the nouns and the laws."""
