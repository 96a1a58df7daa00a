"""SciPy's monotone cubic for the benchmark: answers one line for each line of its input.

`values FILE` writes all results to FILE as 64-bit numbers; `run` answers seconds and sum of one vectorised call.
The first line of the input is JSON: the knots, and the file of the loads.
"""

import json
import sys
import time

import numpy
import scipy
from scipy.interpolate import PchipInterpolator

setup = json.loads(sys.stdin.readline())
curve = PchipInterpolator(setup["loads"], setup["powers"])
loads = numpy.fromfile(setup["file"])
print(scipy.__version__, flush=True)

for line in sys.stdin:
    words = line.split()
    if words[0] == "values":
        curve(loads).tofile(words[1])
        print("written", flush=True)
    else:
        start = time.perf_counter()
        total = float(curve(loads).sum())
        print(time.perf_counter() - start, repr(total), flush=True)
