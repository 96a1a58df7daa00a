"""Global consumer's and producer's risk by SciPy's quad, from the definition, to 1e-10 of each."""

import json
import sys
from math import erfc, exp, pi, sqrt

import numpy
import scipy
from answer import answer
from scipy.integrate import quad

rows = numpy.fromfile(json.loads(sys.stdin.readline())["file"]).reshape(-1, 4).tolist()
half = sqrt(0.5)


def above(z):
    return 0.5 * erfc(z * half)


def work():
    results = []
    for mean, spread, u, guard in rows:
        low, high = -1 + guard, 1 - guard
        height = 1 / (spread * sqrt(2 * pi))

        def density(x):
            return height * exp(-0.5 * ((x - mean) / spread) ** 2)

        def beyond(x):
            return density(x) * (above((x - high) / u) - above((x - low) / u))

        def short(x):
            return density(x) * (above((low - x) / u) - above((high - x) / u))

        def rejected(x):
            return density(x) * (above((high - x) / u) + above((x - low) / u))

        # Ten uncertainties beyond a limit the reading is never accepted; breaks where the integrand bends.
        far = 10 * u
        within = dict(epsabs=0, epsrel=1e-10, limit=200)
        consumer = (
            quad(beyond, 1, 1 + far, points=(1 + u, 1 + 3 * u), **within)[0]
            + quad(short, -1 - far, -1, points=(-1 - 3 * u, -1 - u), **within)[0]
        )
        bends = sorted({max(-1, low - u), low, low + 3 * u, high - 3 * u, high, min(1, high + u)})
        producer = quad(rejected, -1, 1, points=[x for x in bends if -1 < x < 1], **within)[0]
        results += (consumer, producer)
    return [results]


answer(scipy.__version__, work)
