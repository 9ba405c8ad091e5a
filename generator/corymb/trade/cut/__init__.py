"""What to cut for the orders of the days ahead, from what stands on the walk."""
