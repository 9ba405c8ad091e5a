"""What do the colours of stems and arrangements do: how alike, how much, how light?"""
