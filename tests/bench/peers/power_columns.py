"""P = I^2 R by NumPy's closed form: power, standard uncertainty, effective degrees of freedom."""

import json
import sys

import numpy
from answer import answer

I, uI, nuI, R, uR, nuR = (numpy.fromfile(path) for path in json.loads(sys.stdin.readline())["files"])


def work():
    power = I * I * R
    p = 2 * uI / I
    q = uR / R
    p *= p
    q *= q
    total = p + q
    u = power * numpy.sqrt(total)
    p /= total
    q /= total
    p *= p
    q *= q
    p /= nuI
    q /= nuR
    return power, u, 1 / (p + q)


answer(numpy.__version__, work)
