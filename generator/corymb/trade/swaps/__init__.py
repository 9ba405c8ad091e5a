"""What may stand in for a stem that isn't there, and why?"""
