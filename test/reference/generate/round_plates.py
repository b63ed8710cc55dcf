# Round plates on a mat, G (u'' + u'/r) = p(u) outside the plate, by scipy's collocation solver of boundary value problems.
#
#   python3 round_plates.py     writes round_plates.csv
#
# Lengths in mm, pressures in kPa, softness 1 mm at 10 kPa, G = l^2 10 kPa / 1 mm. Nothing of it came from Swardsink.
# Laws with a slope at zero: below an exponent of one the mat ends at a free edge, which the solver takes badly.
import csv
import numpy as np
from scipy.integrate import solve_bvp

P_R, S = 10.0, 1.0


def law(name, extra):
    """Pressure, and slope at zero."""
    if name == "linear":
        return lambda u: P_R * u / S, P_R / S
    if name == "stiffening":
        k = P_R * (1 - S / extra) / S
        return lambda u: k * u / (1 - u / extra), k
    if name == "logarithmic":
        m = -P_R / np.log1p(-S / extra)
        return lambda u: -m * np.log1p(-u / extra), m / extra
    # quadratic: p = 10 kPa (u + c u^2)/(1 + c)
    return lambda u: P_R * (u + extra * u * u) / (1 + extra), P_R / (1 + extra)


def load(name, extra, spread, a, z):
    p, at_zero = law(name, extra)
    G = spread**2 * P_R / S
    l = np.sqrt(G / at_zero)
    far = a + 24 * l

    # r = a + l sinh(s) and w = u'; far out the mat decays as exp(-r/l)/sqrt(r)
    def rhs(s, y):
        r = a + l * np.sinh(s)
        grow = l * np.cosh(s)
        return np.vstack([y[1], p(y[0]) / G - y[1] / r]) * grow

    def ends(left, right):
        return np.array([left[0] - z, right[1] + right[0] * (1 / l + 0.5 / far)])

    s = np.linspace(0, np.arcsinh((far - a) / l), 2000)
    r = a + l * np.sinh(s)
    guess = z * np.exp(-(r - a) / l)
    found = solve_bvp(rhs, ends, s, np.vstack([guess, -guess / l]), tol=1e-9, max_nodes=400000)
    assert found.success, found.message
    return np.pi * a * a * p(z) + 2 * np.pi * a * G * -found.y[1][0]


rows = []
for name, extra in (("linear", 0.0), ("stiffening", 3.0), ("logarithmic", 2.2), ("quadratic", 1.5)):
    for spread, a, z in ((2.0, 0.6, 0.8), (4.0, 10.0, 1.6), (1.5, 12.5, 0.5)):
        rows.append([name, extra, spread, a, z, f"{load(name, extra, spread, a, z):.12g}"])

with open("round_plates.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("law,extra,spread,radius,z,load".split(","))
    writer.writerows(rows)
