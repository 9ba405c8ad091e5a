"""The staff's site on a host that anyone can reach: what it tells is sealed before it is published.

This keeps what is written from whoever fetches the files, and from the host; README.md says plainly
what it doesn't do. `publishing` is where a build comes in.
"""
