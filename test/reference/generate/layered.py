# Two layers in series, the same pressure in both, by scipy's bracketing root finder and adaptive quadrature.
#
#   python3 layered.py     writes layered.csv
#
# Lengths in mm, pressures in kPa, a law told by its softness at 10 kPa. Nothing of it came from Swardsink.
import csv
import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq

P_R = 10.0
rng = np.random.default_rng(20261125)


def law(kind, s, extra):
    """Pressure of one layer and the depth at which it locks."""
    if kind == "linear":
        return lambda z: P_R * z / s, np.inf
    if kind == "power":
        return lambda z: P_R * (z / s) ** extra, np.inf
    if kind == "stiffening":
        k = P_R * (1 - s / extra) / s
        return lambda z: k * z / (1 - z / extra), extra
    m = -P_R / np.log1p(-s / extra)
    return lambda z: -m * np.log1p(-z / extra), extra


def split(upper, lower, z):
    """Depth of the upper layer at which both carry the same."""
    (p1, h1), (p2, h2) = upper, lower
    low = max(0.0, z - h2 * (1 - 1e-14)) if np.isfinite(h2) else 0.0
    high = min(z, h1 * (1 - 1e-14)) if np.isfinite(h1) else z
    return brentq(lambda z1: p1(z1) - p2(z - z1), low, high, xtol=1e-300, rtol=8.9e-16, maxiter=2000)


def pressure(upper, lower, z):
    return upper[0](split(upper, lower, z)) if z > 0 else 0.0


def draw():
    kind = ["linear", "power", "stiffening", "logarithmic"][rng.integers(4)]
    s = round(float(np.exp(rng.uniform(np.log(0.08), np.log(1.6)))), 3)
    extra = {"linear": 0.0, "power": round(float(rng.uniform(0.35, 1.7)), 2)}.get(kind)
    return kind, s, round(s * float(rng.uniform(1.6, 6)), 2) if extra is None else extra


rows = []
R = 31.0
while len(rows) < 20:
    first, second = draw(), draw()
    upper, lower = law(*first), law(*second)
    z = round((first[1] + second[1]) * float(np.exp(rng.uniform(np.log(0.05), np.log(1.4)))), 4)
    room = sum(0.97 * h for _, h in (upper, lower))
    if not z < room:
        continue
    p = pressure(upper, lower, z)
    # both layers clear of their locking depth
    if any(np.isfinite(h) and part > 0.97 * h for (_, h), part in
           zip((upper, lower), (split(upper, lower, z), z - split(upper, lower, z)))):
        continue
    z1 = split(upper, lower, z)
    work = quad(upper[0], 0, z1, epsabs=0, epsrel=1e-13, limit=400)[0]
    work += quad(lower[0], 0, z - z1, epsabs=0, epsrel=1e-13, limit=400)[0]
    # one side of a parabolic arc, x = a (1 - q^3) against the power at its end
    a = np.sqrt(2 * R * z)
    side = quad(lambda q: pressure(upper, lower, max(z - (a * (1 - q**3)) ** 2 / (2 * R), 0.0)) * 3 * q * q * a,
                0, 1, epsabs=0, epsrel=1e-11, limit=400)[0]
    rows.append([first[0], first[1], first[2], second[0], second[1], second[2], z]
                + [f"{value:.13g}" for value in (p, work, side)])

with open("layered.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("upper,upper_s,upper_extra,lower,lower_s,lower_extra,z,pressure,work,side_R31".split(","))
    writer.writerows(rows)
