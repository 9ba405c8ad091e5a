"""How large are the screens that pages are looked at on? In CSS pixels."""

PHONE = {"width": 390, "height": 844}
DESK = {"width": 1440, "height": 900}
