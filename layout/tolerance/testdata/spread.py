# Works testdata/projects/spread.yaml without the program: builds many chests with random
# errors, lays out their fronts as figures of the plane, and measures the gaps at their ends.
# python3 spread.py gives, for each gap, the ± of its middle, of its wedge and of its worse
# end in mm (1.96 standard deviations), and the share of chests in which both ends are
# within 1 mm.
import math
import random

N = 400_000
random.seed(7)


def error(*pm):  # the sum of independent errors, each with its ±
    return sum(random.gauss(0, t / 1.959964) for t in pm)


CUT, TEMPLATE, PRINT, PAPER, RUNNER, CONNECTOR = 0.4, 0.5, 0.3, 0.1, 0.5, 0.2
HOLES = [48, 80, 128, 192]  # above the runner, of the tallest drawer, which all have
UP = sum(HOLES) / 4


def front(bay, bottom, height, runner, scale, start, clear):
    """The four edges of a front as it hangs: functions of x or y."""
    # Bays 400 and 1000 - 2*19 - 400 - 19 = 543 wide; overlay 19 - 2 = 17 at the sides, 8 at
    # the partition; connector inset 20.
    w, left, right, aside = [(425, 37, 28, -4.5), (568, 28, 37, 4.5)][bay]
    wide, high = w + error(CUT), height + error(CUT)
    drilled = [(UP + runner - bottom) * scale + error(TEMPLATE) for _ in range(2)]
    held = [runner + UP + error(RUNNER) + error(CONNECTOR) for _ in range(2)]
    low = [h - d for h, d in zip(held, drilled)]  # lower edge at the two connectors
    slope = (low[1] - low[0]) / (w - left - right)
    cx = start + clear / 2 + aside + sum(error(CONNECTOR) - error(TEMPLATE) for _ in range(2)) / 2
    nominal = cx0[bay]
    bottom_at = lambda x: low[0] + slope * (x - (nominal - w / 2 + left))
    return (
        bottom_at,
        lambda x: bottom_at(x) + high,
        lambda y: cx - wide / 2 - slope * (y - runner - UP),
        lambda y: cx + wide / 2 - slope * (y - runner - UP),
    )


cx0 = [19 + 200 - 4.5, 19 + 400 + 19 + 271.5 + 4.5]
sums = {}


def tell(name, plan, p, q):
    p, q = p - plan, q - plan
    s = sums.setdefault(name, [0.0, 0.0, 0.0, 0.0, 0])
    for i, v in enumerate(((p + q) / 2, q - p, p, q)):
        s[i] += v * v
    s[4] += abs(p) <= 1 and abs(q) <= 1


for _ in range(N):
    scale = 1 + (error(PRINT) + error(PAPER)) / 100  # of every template of the job
    clear = [400 + error(CUT), 543 + error(CUT)]
    start = [19, 19 + clear[0] + 19]
    end, top = start[1] + clear[1] + 19, 700 + error(CUT)
    # Heights above the carcass's lower edge: runners on the carcass bottom at 19, and level
    # with the upper fronts' lower edges at 335.
    deep, flat = [[front(b, lo, h, run, scale, start[b], clear[b]) for b in (0, 1)] for lo, h, run in ((2, 330, 19), (335, 363, 335))]
    for b, word in enumerate(("", "Wide ")):
        w = [425, 568][b]
        l, r = cx0[b] - w / 2, cx0[b] + w / 2
        d, f = deep[b], flat[b]
        tell(f"under {word}deep", 2, d[0](l), d[0](r))
        tell(f"under {word}flat", 3, f[0](l) - d[1](l), f[0](r) - d[1](r))
        tell(f"over {word}flat", 2, top - f[1](l), top - f[1](r))
    for word, row, lo, hi in (("deep", deep, 2, 332), ("flat", flat, 335, 698)):
        a, b = row
        tell(f"left of {word}", 2, a[2](lo), a[2](hi))
        tell(f"left of Wide {word}", 3, b[2](lo) - a[3](lo), b[2](hi) - a[3](hi))
        tell(f"right of Wide {word}", 2, end - b[3](lo), end - b[3](hi))

for name, (m, d, p, q, inside) in sums.items():
    pm = [1.959964 * math.sqrt(v / N) for v in (m, d, max(p, q))]
    print(f"{name}: {pm[0]:.3f} {pm[1]:.3f} {pm[2]:.3f} {inside / N:.4f}")
