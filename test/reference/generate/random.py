# The first random numbers of some seeds, in whole numbers of any length: xoshiro128**, its state from SplitMix32.
#
#   python3 random.py     writes random.csv
#
# The generator after Blackman and Vigna, the mixing after MurmurHash3. Nothing of it came from Swardsink.
import csv

MASK = 0xFFFFFFFF


def left(x, by):
    return ((x << by) | (x >> (32 - by))) & MASK


def mixed(seed):
    state = seed & MASK
    while True:
        state = (state + 0x9E3779B9) & MASK
        z = state
        z = ((z ^ (z >> 16)) * 0x85EBCA6B) & MASK
        z = ((z ^ (z >> 13)) * 0xC2B2AE35) & MASK
        yield z ^ (z >> 16)


def words(s):
    s = list(s)
    while True:
        yield (left((s[1] * 5) & MASK, 7) * 9) & MASK
        t = (s[1] << 9) & MASK
        s[2] ^= s[0]
        s[3] ^= s[1]
        s[1] ^= s[2]
        s[0] ^= s[3]
        s[2] ^= t
        s[3] = left(s[3], 11)


def uniforms(seed):
    low, high = mixed(seed & MASK), mixed(seed >> 32)
    stream = words([next(low) ^ left(next(high), i + 1) for i in range(4)])
    while True:
        top, bottom = next(stream) >> 5, next(stream) >> 6
        yield ((top << 26) + bottom) / 2**53


# The published test of the bare generator: state 1, 2, 3, 4.
published = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804]
stream = words([1, 2, 3, 4])
assert [next(stream) for _ in published] == published

with open("random.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["seed", "first", "second", "third"])
    for seed in (0, 1, 2, 2026, 2**32, 2**53 - 1):
        stream = uniforms(seed)
        out.writerow([seed] + [repr(next(stream)) for _ in range(3)])
