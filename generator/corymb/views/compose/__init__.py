"""How are views made from a studio? One module for each kind of view; `catalogue` feeds them."""
