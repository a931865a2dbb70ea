"""Why an order is late, and which tried changes would keep its promise."""
