"""What the staff's pages show of orders, days of cutting and weeks."""
