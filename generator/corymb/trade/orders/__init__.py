"""What is due on which day, what goes into it, and what comes of it: cut, buckets, time, money."""
