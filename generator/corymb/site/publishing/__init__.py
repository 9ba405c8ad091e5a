"""A finished site gets into its folder, and is never seen half done, whatever happens."""

from corymb.site.publishing.publish import publish, publish_together
from corymb.site.publishing.rooms import PublishError, at_work
from corymb.site.publishing.standing import Wanted

__all__ = ["PublishError", "Wanted", "at_work", "publish", "publish_together"]
