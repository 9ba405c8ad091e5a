"""What does a piece cost, what is asked for it, and what is left? Decimal throughout.

The way from stems to a price, one module a step:

    what goes in       costs.py     stems and their waste, sundries, labour, overhead
    the price          prices.py    costs x mark-ups, tax, rounded up
    what is quoted     guide.py     beside the guide price that clients have read
    for an order       quote.py     quantity, words, each, total: no cost in it
    what is left       mark_up.py   margin and mark-up told apart
                       margin.py    what swaps and spare did to an order's margin

`rounding.py`, `coins.py` and `tax.py` serve them all. `from_recipe.py` and `from_order.py` fill
the plain values from a studio's files.
"""
