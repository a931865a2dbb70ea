"""Why a piece cannot be planned: the piece, the coat, the rule."""
