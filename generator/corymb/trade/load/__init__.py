"""What goes into which bucket, how many stand on a load floor, and what it all weighs."""
