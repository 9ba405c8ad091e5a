"""When must what happen, how long does it take, and who is needed for it?"""
