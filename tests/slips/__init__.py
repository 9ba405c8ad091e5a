"""In what ways does a hand slip on a studio's files? One kind of slip a module.

Each kind is a table by name. `tests/broken` goes over every line of the good studio with those of
lines; `tests/fuzz` draws from all of them for the demo's own files.
"""
