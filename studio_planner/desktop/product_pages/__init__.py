"""What lies on the page of products."""
