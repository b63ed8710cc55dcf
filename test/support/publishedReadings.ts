/** Readings that others published, each with a fit or a test of their own beside it. */

/**
 * Load and deflection of a load cell, two runs of twenty loads: NIST/SEMATECH e-Handbook of Statistical Methods,
 * §4.6.1 (public domain; also NIST StRD, Pontius).
 */
const deflections = [
  0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146, 1.20001, 1.30822,
  1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, 0.11052, 0.22018, 0.32939, 0.43886,
  0.54798, 0.65739, 0.76596, 0.87474, 0.983, 1.0915, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965,
  1.84696, 1.95445, 2.06177, 2.16829,
]
const STEP = 150_000
const LOADS = 20
export const loadCell = {
  deflections,
  loads: deflections.map((_, i) => STEP * (1 + (i % LOADS))),
}

/** Stopping distances (ft) at speeds (mph): Ezekiel 1930, Methods of Correlation Analysis (data from memory). */
const stops =
  '4 2,4 10,7 4,7 22,8 16,9 10,10 18,10 26,10 34,11 17,11 28,12 14,12 20,12 24,12 28,13 26,13 34,13 34,13 46,14 26,14 36,14 60,14 80,15 20,15 26,15 54,16 32,16 40,17 32,17 40,17 50,18 42,18 56,18 76,18 84,19 36,19 46,19 68,20 32,20 48,20 52,20 56,20 64,22 66,23 54,24 70,24 92,24 93,24 120,25 85'
const pairs = stops.split(',').map(pair => pair.split(' ').map(Number))
export const stoppingDistances = {
  speeds: pairs.map(([speed]) => speed!),
  distances: pairs.map(([, distance]) => distance!),
}
