"""How will the flowers look in the light of the place and the hour? All of it is indicative."""
