"""P = I^2 R by the package uncertainties: power, standard uncertainty, effective degrees of freedom, k for 95 %.

The package gives value and components; the degrees of freedom are summed from these, k is SciPy's quantile.
"""

import json
import sys

import numpy
import uncertainties
from answer import answer
from scipy.special import stdtrit
from uncertainties import ufloat

columns = [numpy.fromfile(path).tolist() for path in json.loads(sys.stdin.readline())["files"]]


def work():
    results = []
    for i, ui, nui, r, ur, nur in zip(*columns):
        current = ufloat(i, ui)
        load = ufloat(r, ur)
        power = current**2 * load
        u = power.std_dev
        components = power.error_components()
        nu = u**4 / (components[current] ** 4 / nui + components[load] ** 4 / nur)
        results += (power.nominal_value, u, nu, stdtrit(nu, 0.975))
    return [results]


answer(uncertainties.__version__, work)
