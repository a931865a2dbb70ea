"""What lies on the page of the stock."""
