# Profile intervals of fitted curves: the other parameters fitted anew at every value held, by scipy's least_squares,
# and the ends by its bracketing root finder.
#
#   python3 profiles.py     writes profiles.csv
#
# Readings: NIST's Misra1a, Rat42 and BoxBOD (../data/nist); Puromycin, treated cells (Treloar 1974, as in Bates and
# Watts 1988, appendix A1.3). Nothing of it came from Swardsink.
import csv
import pathlib
import numpy as np
from scipy.optimize import brentq, least_squares
from scipy.stats import norm, t

NIST = pathlib.Path(__file__).parent.parent / "data" / "nist"


def readings(name):
    table = np.loadtxt(NIST / f"{name}.csv", delimiter=",", skiprows=1)
    return table[:, 1], table[:, 0]


puromycin = (
    np.array([0.02, 0.02, 0.06, 0.06, 0.11, 0.11, 0.22, 0.22, 0.56, 0.56, 1.1, 1.1]),
    np.array([76.0, 47, 97, 107, 123, 139, 159, 152, 191, 201, 207, 200]),
)
rise = lambda x, b: b[0] * (1 - np.exp(-b[1] * x))
cases = [
    ("Misra1a", readings("Misra1"), rise, [238.9, 5.5e-4]),
    ("Rat42", readings("Rat42"), lambda x, b: b[0] / (1 + np.exp(b[1] - b[2] * x)), [72.5, 2.6, 0.067]),
    ("BoxBOD", readings("BoxBOD"), rise, [213.8, 0.547]),
    ("Puromycin", puromycin, lambda x, b: b[0] * x / (b[1] + x), [212.7, 0.064]),
]


def least(model, x, y, start):
    r = least_squares(lambda b: y - model(x, b), start, x_scale=np.abs(start), ftol=1e-15, xtol=1e-15, gtol=1e-15, max_nfev=5000, jac="3-point")
    return r.x, 2 * r.cost


rows = []
for name, (x, y), model, start in cases:
    best, s = least(model, x, y, np.array(start))
    dof = len(y) - len(best)
    for k in range(len(best)):
        others = [j for j in range(len(best)) if j != k]

        def rest(value):
            def inner(x, free):
                b = np.array(best)
                b[others] = free
                b[k] = value
                return model(x, b)

            return least(inner, x, y, best[others])[1]

        for level, noise in ((0.95, "estimated"), (0.8, "estimated"), (0.95, "known")):
            if noise == "estimated":
                limit = s + s / dof * t.ppf((1 + level) / 2, dof) ** 2
            else:
                limit = s + s / dof * norm.ppf((1 + level) / 2) ** 2
            ends = []
            for side in (-1, 1):
                far = best[k]
                while rest(far) < limit:
                    far += side * 0.05 * abs(best[k])
                ends.append(brentq(lambda v: rest(v) - limit, best[k], far, xtol=1e-300, rtol=1e-14))
            rows.append([name, f"b{k + 1}", level, noise, repr(float(np.sqrt(s / dof))), *(repr(float(e)) for e in ends)])

with open("profiles.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["set", "parameter", "level", "noise", "deviation", "low", "high"])
    out.writerows(rows)
