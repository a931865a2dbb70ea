"""Money: what a piece and an order cost, which price follows, what haste and faults cost."""
