"""When does what stand in these beds? Book dates brought here, the studio's own log, and chances.

`hopkins` brings the book's dates to the studio's place, `logged` blends in what the studio wrote
down, `flush` says how likely a flush stands on a day, `stem_season` puts these together for one
stem, and `beds` answers for every stem.
"""
