"""Scale, squareness and play are told apart and never applied; affine only on request."""

import numpy as np
import pytest

from drypoint.errors import InputError
from drypoint.geometry.rigid import Rigid
from drypoint.reference.affine import fit_affine
from drypoint.reference.explain import explain
from drypoint.reference.fit import fit_rigid
from drypoint.reference.head import head_offset

HOLES = np.array([(4.0, 5.0), (95.0, 8.0), (60.0, 72.0), (9.0, 66.0), (50.0, 30.0)])
TURN = Rigid(0.2, (3.0, 9.0))


def _kinds(found):
    return {e.kind: e for e in found}


def test_scale_is_seen_and_not_applied():
    touched = TURN.apply(HOLES) * 1.002
    fit = fit_rigid(HOLES, touched, sigma=0.01)
    best = explain(fit)[0]
    assert best.kind == "scale"
    assert best.significant
    assert best.values[0] == pytest.approx(0.002, abs=1e-6)
    mapped = fit.apply(HOLES)
    assert np.hypot(*(mapped[1] - mapped[0])) == pytest.approx(np.hypot(*(HOLES[1] - HOLES[0])))


def test_axes_out_of_square():
    skew = np.array([[1.0, 0.003], [0.0, 1.0]])
    touched = TURN.apply(HOLES) @ skew.T
    found = _kinds(explain(fit_rigid(HOLES, touched, sigma=0.005)))["axes"]
    assert found.significant
    assert found.values[2] == pytest.approx(0.003, abs=5e-5)


def test_play_is_seen_by_the_side_of_approach():
    sides = np.array([(1, 1), (-1, 1), (1, -1), (-1, -1), (1, 1)])
    touched = TURN.apply(HOLES) + sides * np.array([0.08, 0.05]) / 2
    found = explain(fit_rigid(HOLES, touched, sigma=0.005), approach=sides)
    assert found[0].kind == "play"
    assert found[0].values == pytest.approx((0.08, 0.05), abs=1e-4)
    assert "play" not in _kinds(explain(fit_rigid(HOLES, touched), approach=np.ones((5, 2))))


def test_nothing_to_explain():
    rng = np.random.default_rng(0)
    fit = fit_rigid(HOLES, TURN.apply(HOLES) + rng.normal(0, 0.01, HOLES.shape), sigma=0.01)
    assert not any(e.significant for e in explain(fit))


def test_affine_comes_back_and_says_its_worth():
    matrix = np.array([[1.002, 0.004], [-0.001, 0.998]])
    touched = HOLES @ matrix.T + (5.0, 6.0)
    found = fit_affine(HOLES, touched, sigma=0.02)
    assert found.matrix == pytest.approx(matrix)
    assert found.apply([(10.0, 20.0)])[0] == pytest.approx(matrix @ (10, 20) + (5, 6))
    rng = np.random.default_rng(2)
    errors = [
        fit_affine(HOLES, touched + rng.normal(0, 0.02, HOLES.shape), sigma=0.02).apply([(99.0, 79.0)])[0]
        - (matrix @ (99, 79) + (5, 6))
        for _ in range(2000)
    ]
    # variance of 2000 draws: relative spread 3.2 %, five of them allowed
    expected = np.diag(found.covariance_at([(99.0, 79.0)])[0])
    assert np.var(errors, axis=0) == pytest.approx(expected, rel=0.16)


def test_affine_needs_four_holes_off_a_line():
    with pytest.raises(InputError, match="four holes"):
        fit_affine(HOLES[:3], HOLES[:3])
    line = np.column_stack((np.arange(5.0) * 10, np.zeros(5)))
    with pytest.raises(InputError, match="one line"):
        fit_affine(line, line)


def test_head_offset():
    spindle = np.array([(10.0, 10.0), (60.0, 12.0)])
    found = head_offset(spindle, spindle + np.array((42.0, -3.0)), spindle_sigma=0.03, other_sigma=0.04)
    assert found.offset == pytest.approx((42.0, -3.0))
    assert found.sigma == pytest.approx(0.05 / np.sqrt(2))
    assert found.chance == pytest.approx(1.0)
    assert found.rigid.apply([(0, 0)])[0] == pytest.approx((42.0, -3.0))
    bad = head_offset(spindle, spindle + np.array([(42.0, -3.0), (43.0, -3.0)]))
    assert bad.chance is not None
    assert bad.chance < 1e-4
    with pytest.raises(InputError):
        head_offset([], [])
