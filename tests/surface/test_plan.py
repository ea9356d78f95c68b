"""Where to touch: on the grooves, clear of what is in the way, and where it helps most."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from shapely import LineString, MultiLineString, Point, box

from drypoint.errors import PlanError
from drypoint.surface.model import fit_surface
from drypoint.surface.plan import expected_drop, next_touches, plan_touches, worth_touching

REGION = box(2, 2, 98, 78)


def test_touches_lie_on_grooves_inside_the_region(loops):
    region = REGION.difference(Point(30, 30).buffer(12))
    places = plan_touches(loops, region, 40)
    assert places.shape == (40, 2)
    assert shapely.contains_xy(region, *places.T).all()
    grooves = MultiLineString([LineString(line) for line in loops])
    assert max(grooves.distance(Point(p)) for p in places) < 1e-6


def test_grooves_are_covered_better_than_by_as_many_random_places(loops):
    ground = np.vstack(loops)
    planned = plan_touches(loops, REGION, 40)
    picked = ground[np.random.default_rng(0).choice(len(ground), 40, replace=False)]

    def gap(places):
        return np.mean(np.min(np.hypot(*(ground[:, None] - places[None]).transpose(2, 0, 1)), axis=1))

    assert gap(planned) < 0.85 * gap(picked)


def test_no_two_touches_meet(loops):
    places = plan_touches(loops, REGION, 80)
    apart = np.hypot(*(places[:, None] - places[None]).transpose(2, 0, 1)) + 9.0 * np.eye(len(places))
    assert apart.min() >= 0.3


def test_order_is_shorter_than_as_found(loops):
    places = plan_touches(loops, REGION, 60)
    travel = np.hypot(*np.diff(places, axis=0).T).sum()
    shuffled = np.random.default_rng(0).permutation(places)
    assert travel < 0.4 * np.hypot(*np.diff(shuffled, axis=0).T).sum()


def test_without_grooves_the_region_is_covered():
    places = plan_touches([], REGION, 20)
    assert len(places) == 20
    assert np.ptp(places[:, 0]) > 60
    assert np.ptp(places[:, 1]) > 45


def test_same_seed_same_plan(loops):
    assert np.array_equal(plan_touches(loops, REGION, 30, seed=5), plan_touches(loops, REGION, 30, seed=5))


def test_nowhere_to_touch_is_said(loops):
    with pytest.raises(PlanError, match="nowhere"):
        plan_touches(loops, box(0, 0, 0, 0), 10)


def test_next_touches_go_where_nothing_is_known(loops, rippled):
    left = plan_touches([line for line in loops if line[:, 0].max() < 50], REGION, 40)
    surface = fit_surface(np.column_stack((left, rippled(left))))
    further = next_touches(surface, loops, REGION, 6)
    assert (further[:, 0] > 48).all()
    drop = expected_drop(surface, loops, REGION, 6)
    assert drop.after < drop.before
    assert drop.seconds > 0


def test_touching_goes_on_while_it_pays(loops, rippled):
    places = plan_touches(loops, REGION, 30)
    surface = fit_surface(np.column_stack((places, rippled(places))))

    def softly(sigma):
        return np.minimum(sigma / 0.02, 1.0)

    dear = worth_touching(surface, loops, REGION, doubt=softly, seconds_per_mm=0.01)
    cheap = worth_touching(surface, loops, REGION, doubt=softly, seconds_per_mm=8.0)
    assert not dear.pays
    assert dear.count == 10
    assert dear.saved < dear.cost == pytest.approx(60.0)
    assert cheap.pays
    assert cheap.count == len(cheap.places) > 5
    assert cheap.saved > cheap.cost
    assert cheap.after < cheap.before
    assert shapely.contains_xy(REGION, *cheap.places.T).all()
