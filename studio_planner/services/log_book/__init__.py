"""The log: writing down what happened, correcting it, and finding it again."""
