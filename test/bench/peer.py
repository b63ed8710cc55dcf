"""The peer in Python: what scipy's user would write. Reads a line "task size", does it, and answers
"seconds pieces value": CPU time, how many, and a number to compare."""

import sys
import time

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq, fsolve, least_squares
from scipy.special import beta

REFERENCE, G = 10e3, 9.80665
R, L, H = 0.029, 0.55, 6e-3
FITS = 10
GOLD = (0.6180339887498949, 0.7548776662466927, 0.5698402909980532)


def even(count, kind):
    """Numbers between 0 and 1 that fill the interval evenly, the same in every tongue."""
    return np.fmod(np.arange(count) * GOLD[kind], 1)


def power(count):
    """The closed form, over arrays."""
    load, s, n = 100 * (1 + 9 * even(count, 0)), 0.2e-3 + 1e-3 * even(count, 1), 0.4 + 0.8 * even(count, 2)

    def run():
        C = beta(0.5, n + 1) / 2
        return (load * s**n / (2 * L * C * REFERENCE * np.sqrt(2 * R))) ** (1 / (n + 0.5))

    return lambda: (run().sum(), count)


def stiffness(s, locking):
    return REFERENCE * (1 - s / locking) / s


def stiffening(count):
    """A bracketing root finder round a quadrature."""
    loads = 100.0 + 10 * np.arange(count)
    k = stiffness(0.6e-3, H)

    def load_at(z):
        side, _ = quad(lambda x: k * (z - x * x / (2 * R)) / (1 - (z - x * x / (2 * R)) / H), 0, np.sqrt(2 * R * z))
        return 2 * L * side

    return lambda: (sum(brentq(lambda z: load_at(z) - load, 0, 0.99 * H) for load in loads) / count, count)


def side(z, k, locking):
    """One side of a whole arc, closed form."""
    part = z / locking
    return k * locking * np.sqrt(2 * R * locking) * (np.arcsin(np.sqrt(part)) / np.sqrt(1 - part) - np.sqrt(part))


def side_slope(z, k, locking):
    part = z / locking
    angle = np.arcsin(np.sqrt(part)) / np.sqrt(1 - part)
    return k * np.sqrt(2 * R * locking) * (np.sqrt(part) + angle) / (2 * (1 - part))


def settle(count):
    """Both rollers and the lean as three unknowns of fsolve."""
    B, c, bench, Rr, rear, body, at, height = 0.19, 0.105, 3.4e-3, 0.0255, 4.3, 18.3, 0.09, 0.07
    masses, softness = 4 + 2 * even(count, 0), 0.4e-3 + 0.4e-3 * even(count, 1)

    def one(mass, s):
        k = stiffness(s, H)

        def unbalanced(x):
            front, back, tilt = np.exp(x[0]), np.exp(x[1]), x[2]
            X = lambda place, tall: place * np.cos(tilt) + (tall - R) * np.sin(tilt)
            on_rear = G * (rear * X(B, Rr) + body * X(at, height)) / X(B, Rr)
            on_front = G * (mass + rear + body) - on_rear
            return (
                2 * L * side(front, k, H) / on_front - 1,
                2 * L * np.sqrt(Rr / R) * side(back, k, H) / on_rear - 1,
                1e3 * (front + B * np.sin(tilt) + (Rr - R) * (1 - np.cos(tilt)) - back),
            )

        x = fsolve(unbalanced, (np.log(1e-3), np.log(1e-3), 0), xtol=1e-12)
        return bench - np.exp(x[0]) - c * np.sin(x[2]) - (bench - R) * (1 - np.cos(x[2]))

    return lambda: (sum(one(mass, s) for mass, s in zip(masses, softness)), count)


def newton(loads, k, locking, start):
    """Sinkages under many loads at once, Newton in logarithms over arrays."""
    x, most = start, np.log(0.99 * locking)
    for _ in range(60):
        z = np.exp(x)
        carried = side(z, k, locking)
        miss = np.log(2 * L * carried / loads)
        x = np.minimum(x - np.clip(miss * carried / (side_slope(z, k, locking) * z), -1, 1), most)
        if np.all(np.abs(miss) < 1e-6):
            break
    return x


def sinkage_map(size):
    loads = 60 + np.linspace(2, 10, size) * G
    softness = np.exp(np.linspace(np.log(0.04e-3), np.log(2e-3), size))
    k = stiffness(softness, H)[:, None]

    def run():
        return np.exp(newton(loads[None, :], k, H, np.full((size, size), np.log(1e-3))))

    return lambda: (run().sum(), size * size)


def readings(count):
    """Invented readings of a smooth roller on turf of softness 0.55 mm that locks at 5.5 mm; the gauge's zero is off."""
    loads = 80 + 520 * np.arange(count) / (count - 1)
    z = np.exp(newton(loads, stiffness(0.55e-3, 5.5e-3), 5.5e-3, np.full(count, np.log(1e-3))))
    return loads, z + 0.1e-3 + 0.06e-3 * (even(count, 0) + even(count, 1) + even(count, 2) - 1.5)


def fit(count):
    """Softness, locking depth and datum through the implicit model, with analytic derivatives."""
    loads, read = readings(count)
    # each search starts at what was read
    start = np.log(np.maximum(read, 1e-5))

    def model(p):
        s, locking = np.exp(p[0]), np.exp(p[1])
        k = stiffness(s, locking)
        return np.exp(newton(loads, k, locking, np.minimum(start, np.log(0.98 * locking)))), s, locking, k

    def residuals(p):
        return model(p)[0] + 1e-3 * p[2] - read

    def jacobian(p):
        z, s, locking, k = model(p)
        carried, slope = side(z, k, locking), side_slope(z, k, locking)
        stiff = 1 / s - 1 / locking
        by_s = carried * (-1 / s) / stiff
        by_locking = carried * ((1 / locking) / stiff + 1.5) - slope * z
        return np.column_stack((-by_s / slope, -by_locking / slope, np.full(count, 1e-3)))

    def run():
        guess = (np.log(0.8e-3), np.log(8e-3), 0)
        return np.exp(least_squares(residuals, guess, jac=jacobian, x_scale="jac").x[0])

    return lambda: (sum(run() for _ in range(FITS)) / FITS, FITS)


TASKS = {"power": power, "stiffening": stiffening, "settle": settle, "map": sinkage_map, "fit": fit}

for line in sys.stdin:
    task, size = line.split()
    run = TASKS[task](int(size))
    before = time.process_time()
    value, pieces = run()
    print(time.process_time() - before, pieces, repr(float(value)), flush=True)
