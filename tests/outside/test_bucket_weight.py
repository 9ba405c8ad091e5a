"""A bucket's weight and the density of water, against steam tables."""

import pytest

from corymb.trade.load.weight import bucket_kg, water_kg_per_m3

# IAPWS-95 and IAPWS-97, computed with the packages iapws and CoolProp, kg a cubic metre.
DENSITIES = {4: 999.975, 10: 999.702, 20: 998.207, 30: 995.65}


@pytest.mark.parametrize(("celsius", "density"), DENSITIES.items())
def test_water_is_as_dense_as_the_steam_tables_say(celsius: float, density: float) -> None:
    assert water_kg_per_m3(celsius) == pytest.approx(density, abs=0.005)


# 5 L at 20 degrees 4.991 kg, 25 stems of 45 g 1.125 kg, the bucket 0.9 kg.
def test_a_bucket_weighs_its_water_its_stems_and_itself() -> None:
    assert bucket_kg(5, 25 * 45, 0.9, celsius=20) == pytest.approx(7.016, abs=0.0005)
