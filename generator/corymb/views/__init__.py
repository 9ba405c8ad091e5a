"""What may each audience see? Every page is made from one of these views and from nothing else.

A view is an allow-list: what a client may see is what the client's view has a field for.
Staff views extend the client's and add theirs. Templates get a view, never a model.
"""
