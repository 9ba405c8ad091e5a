"""How does a file's text become a tree with places, and its slips sentences?

`decode` makes bytes into text; `build` makes text into a tree; where YAML can't be read at all,
`scan`, `flow` and `indent` look for the slip a person made. The door is `studio/yaml_tree.py`.
"""
