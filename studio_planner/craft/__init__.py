"""The nouns: pieces, coats, products, orders, the room, the shelf, hands, the plan, the log."""
