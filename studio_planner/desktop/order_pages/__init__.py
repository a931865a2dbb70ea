"""The parts of the page of orders: the answer to the customer, and the order as entered."""
