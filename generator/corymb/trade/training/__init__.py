"""What does a helper learn, in which order, and how soon should it go quickly?"""
