"""Monte Carlo of P = I^2 R by NumPy: mean, standard deviation, symmetric 95 % interval by partition."""

import json
import sys

import numpy
from answer import answer

setup = json.loads(sys.stdin.readline())
trials = setup["trials"]


def work():
    random = numpy.random.default_rng(setup["seed"])
    current = random.normal(setup["I"], setup["uI"], trials)
    load = random.normal(setup["R"], setup["uR"], trials)
    power = current * current * load
    span = round(0.95 * trials)
    low = (trials - span + 1) // 2 - 1
    mean = power.mean()
    u = power.std(ddof=1)
    power.partition((low, low + span))
    return mean, u, power[low], power[low + span]


answer(numpy.__version__, work)
