"""The sites as they are now, shown to someone who edits the studio's files beside them."""
