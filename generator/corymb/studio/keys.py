"""What is a field's key in the studio's files?"""


def key_of(field_name: str) -> str:
    """The YAML key of a model's field: `in season` for `in_season`, `from` for `from_`."""
    return field_name.rstrip("_").replace("_", " ")
