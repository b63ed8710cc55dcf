# Fits of turf to invented readings by scipy.optimize.least_squares, the turf answered by quadrature and root finding.
#
#   python3 compliance_fits.py     writes compliance_readings.csv and compliance_fits.csv
#
# Lengths in mm, loads in N, pressures in N/mm2. Made with numpy 2.4.6 and scipy 1.17.1. Nothing of it came from Swardsink.
# Positive numbers are fitted in their logarithm; their intervals are exp(ln value -+ t se/value). Standard errors from
# (J'J)^-1 with J by central differences of fourth order at the solution; s2 = S/(n - p), or 1 with the normal for t where
# the noise is known.
import csv
import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq, fsolve, least_squares
from scipy.special import k0, k1
from scipy.stats import norm, t as student

P_R, GRAVITY = 0.010, 9.80665
rng = np.random.default_rng(20_250_311)
LENGTH = 520.0


# laws -----------------------------------------------------------------------------------------------------------------
def power(s, n):
    return lambda z: P_R * (z / s) ** n


def stiffening(s, H):
    k = P_R * (1 - s / H) / s
    return lambda z: k * z / (1 - z / H)


# feet -----------------------------------------------------------------------------------------------------------------
def smooth_line(p, D, z):
    """Both sides, x = a sin t takes away the root at the end of the arc."""
    a = np.sqrt(D * z)
    return 2 * a * quad(lambda t: p(z * np.cos(t) ** 2) * np.cos(t), 0, np.pi / 2, epsabs=0, epsrel=1e-13, limit=200)[0]


def grooved_load(p, D, pitch, land, depth, z):
    """No spread: lands by the law, gaps by what is deeper than the groove; the roller ends on lands."""
    lands = smooth_line(p, D, z)
    gaps = smooth_line(p, D, z - depth) if z > depth else 0.0
    line = (lands * land + gaps * (pitch - land)) / pitch
    return line * (LENGTH - land) + lands * land


def plate_load(k, spread, D, z):
    """Linear law, round plate."""
    a = D / 2
    edge = 0.0 if spread == 0 else 2 * spread / a * k1(a / spread) / k0(a / spread)
    return np.pi * a * a * k * z * (1 + edge)


def depth_under(load, of, top):
    return brentq(lambda z: np.log(of(z) / load), 1e-9, top, xtol=1e-15, rtol=8.9e-16, maxiter=500)


# the unit: rigid, vertical reactions through the axles, leaning; linear law, smooth rollers -----------------------------
UNIT = dict(B=210.0, edge=118.0, bench=4.4, Rr=26.0, mr=4.1, mb=19.3, xb=96.0, hb=92.0, fitted=56.0)


def unit_drop(s, D, mass, point):
    B, Rr, mr, mb = UNIT["B"], UNIT["Rr"], UNIT["mr"], UNIT["mb"]
    R, larger = D / 2, (D - UNIT["fitted"]) / 2
    x = point * B
    bench = UNIT["bench"] + larger * (1 - point)
    hb = UNIT["hb"] + larger * (1 - UNIT["xb"] / B)
    carried = lambda z, radius: LENGTH * 4 / 3 * P_R / s * np.sqrt(2 * radius) * max(z, 1e-12) ** 1.5
    total = GRAVITY * (mass + mr + mb)

    def rest(v):
        zf, th = v
        C, S = np.cos(th), np.sin(th)
        zr = zf + B * S + (Rr - R) * (1 - C)
        Xr, Xb = B * C + (Rr - R) * S, UNIT["xb"] * C + (hb - R) * S
        Ff, Fr = carried(zf, R), carried(zr, Rr)
        return [(Ff + Fr) / total - 1, (Fr * Xr - GRAVITY * (mr * Xr + mb * Xb)) / (total * B)]

    zf, th = fsolve(rest, [s, 0.0], xtol=1e-13)
    return zf + x * np.sin(th) + (bench - R) * (1 - np.cos(th)) - larger * (1 - point)


# the four cases: rows, and the turf's answer to them at the numbers fitted ----------------------------------------------
ROLLERS = {
    "smooth": dict(diameter=56.0, mass=5.2),
    "stout": dict(diameter=74.0, mass=9.4),
    "grooved": dict(diameter=60.0, mass=6.1, pitch=12.0, land=5.0, depth=1.5),
}


def row(case, group, foot, load, point="", n=1):
    shape = dict(diameter=float(foot)) if foot.replace(".", "").isdigit() else ROLLERS[foot]
    name = "plate" if "mass" not in shape else foot
    return dict(case=case, set=group, foot=name, load=load, point=point, n=n, **{**dict(mass="", pitch="", land="", depth=""), **shape})


def standing(law, r):
    p = law
    if r["foot"] == "grooved":
        of = lambda z: grooved_load(p, r["diameter"], r["pitch"], r["land"], r["depth"], z)
    else:
        of = lambda z: LENGTH * smooth_line(p, r["diameter"], z)
    return of


CASES = {}
CASES["power in two sets"] = dict(
    rows=[row("power in two sets", g, f, w) for g in ("A", "B") for f in ("smooth", "stout") for w in (60.0, 95.0, 150.0, 240.0)],
    names=[("softness", "A"), ("softness", "B"), ("exponent", "")],
    logs=[1, 1, 1],
    start=[1.0, 1.0, 1.0],
    truth=[0.62, 0.95, 0.78],
    answer=lambda v, r: depth_under(r["load"], standing(power(v[0] if r["set"] == "A" else v[1], v[2]), r), 40.0),
    noise=0.03,
    known=None,
)
CASES["plates with spread"] = dict(
    rows=[
        row("plates with spread", "", d, round(q * np.pi * float(d) ** 2 / 4, 4), n=n)
        for d, n in (("18", 1), ("44", 3))
        for q in (0.006, 0.011, 0.017, 0.025)
    ],
    names=[("softness", ""), ("spread", "")],
    logs=[1, 0],
    start=[1.0, 1.0],
    truth=[1.35, 2.1],
    answer=lambda v, r: r["load"] / plate_load(P_R / v[0], v[1], r["diameter"], 1.0),
    noise=0.02,
    known=0.02,
)
CASES["stiffening from a datum"] = dict(
    rows=[
        row("stiffening from a datum", g, f, w)
        for g in ("A", "B")
        for f in ("smooth", "grooved")
        for w in (40.0, 85.0, 160.0, 300.0, 420.0)
    ],
    names=[("softness", "A"), ("softness", "B"), ("lockingDepth", ""), ("datum", "A"), ("datum", "B")],
    logs=[1, 1, 1, 0, 0],
    start=[1.0, 1.0, 8.0, 0.0, 0.0],
    truth=[0.8, 1.1, 4.6, 0.7, -1.2],
    answer=lambda v, r: depth_under(
        r["load"], standing(stiffening(v[0] if r["set"] == "A" else v[1], v[2]), r), 0.99 * v[2]
    )
    + (v[3] if r["set"] == "A" else v[4]),
    noise=0.02,
    known=None,
)
CASES["drops of the unit"] = dict(
    rows=[
        row("drops of the unit", "", f, "", point=p)
        for p in (0.15, 0.55)
        for f in ("smooth", "stout", "smooth", "stout")
    ],
    names=[("softness", ""), ("datum", "")],
    logs=[1, 0],
    start=[2.0, 0.0],
    truth=[2.4, 5.0],
    answer=lambda v, r: unit_drop(v[0], r["diameter"], r["mass"], r["point"]) + v[1],
    noise=0.03,
    known=None,
)


def natural(p, logs):
    return [np.exp(x) if log else x for x, log in zip(p, logs)]


def slopes(of, p):
    J = []
    for j in range(len(p)):
        h = 2e-4 * max(1.0, abs(p[j]))
        at = lambda k: of([x + k * h if i == j else x for i, x in enumerate(p)])
        J.append((at(-2) - 8 * at(-1) + 8 * at(1) - at(2)) / (12 * h))
    return np.array(J).T


readings, fits = [], []
for case, c in CASES.items():
    rows, logs = c["rows"], c["logs"]
    for r in rows:
        r["sinkage"] = round(c["answer"](c["truth"], r) + c["noise"] / np.sqrt(r["n"]) * rng.standard_normal(), 3)
    weights = np.array([r["n"] / (c["known"] ** 2 if c["known"] else 1.0) for r in rows])
    measured = np.array([r["sinkage"] for r in rows])
    left = lambda p: np.sqrt(weights) * (measured - np.array([c["answer"](natural(p, logs), r) for r in rows]))
    start = [np.log(x) if log else x for x, log in zip(c["start"], logs)]
    found = least_squares(left, start, jac=lambda p: slopes(left, p), method="lm", xtol=1e-14, ftol=1e-14, gtol=1e-14)
    J = slopes(left, found.x)
    n, p = J.shape
    S = float(np.sum(left(found.x) ** 2))
    variance = 1.0 if c["known"] else S / (n - p)
    reach = norm.ppf(0.975) if c["known"] else student.ppf(0.975, n - p)
    covariance = variance * np.linalg.inv(J.T @ J)
    for j, (name, group) in enumerate(c["names"]):
        deviation = np.sqrt(covariance[j, j])
        low, high = found.x[j] - reach * deviation, found.x[j] + reach * deviation
        value = np.exp(found.x[j]) if logs[j] else found.x[j]
        if logs[j]:
            deviation, low, high = value * deviation, np.exp(low), np.exp(high)
        fits.append([case, name, group] + [f"{x:.12g}" for x in (value, deviation, low, high, S)])
    readings += rows

columns = "case,set,foot,diameter,pitch,land,depth,mass,load,point,n,sinkage".split(",")
with open("compliance_readings.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(columns)
    writer.writerows([r[c] for c in columns] for r in readings)
with open("compliance_fits.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("case,parameter,set,value,standard_error,low,high,sum_of_squares".split(","))
    writer.writerows(fits)
