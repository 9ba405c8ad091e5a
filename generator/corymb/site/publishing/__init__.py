"""A finished site gets into its folder, and is never seen half done, whatever happens."""

from corymb.site.publishing.placing import publish, publish_together
from corymb.site.publishing.rooms import PublishError, Waiting, at_work
from corymb.site.publishing.standing import Wanted
from corymb.site.publishing.told import ToldFolder

__all__ = [
    "PublishError",
    "ToldFolder",
    "Waiting",
    "Wanted",
    "at_work",
    "publish",
    "publish_together",
]
