"""The staff's site behind a passphrase."""
