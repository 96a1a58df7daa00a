"""NumPy's figures of a two-channel capture for the benchmark.

The first line of the input is JSON: the files of the channels, the sample interval, and how many samples within the
threshold make a pause.
"""

import json
import sys

import numpy

from answer import answer

setup = json.loads(sys.stdin.readline())
voltage = numpy.fromfile(setup["voltage"])
current = numpy.fromfile(setup["current"])
interval = setup["sampleInterval"]
pause = setup["pause"]


def passes(samples, above, within, middle, level):
    """Share of the way from samples above the threshold to their neighbours within it at which the threshold lies."""
    high = numpy.abs(samples[above] - middle)
    low = numpy.sign(samples[above] - middle) * (samples[within] - middle)
    return (high - level) / (high - low)


def figures(v, i):
    middle = v.mean()
    lowest, highest = v.min(), v.max()
    level = 0.1 * max(highest - middle, middle - lowest)
    above = numpy.flatnonzero((v > middle + level) | (v < middle - level))
    gaps = numpy.flatnonzero(numpy.diff(above) > pause)
    begins, ends = above[gaps + 1], above[gaps]
    if above[0] >= pause:
        begins = numpy.insert(begins, 0, above[0])
    starts = begins - passes(v, begins, begins - 1, middle, level)
    stops = ends + passes(v, ends, ends + 1, middle, level)
    length = starts[-1] - starts[0]
    first, last = begins[0], begins[-1]
    vw, iw = v[first:last], i[first:last]
    # Bursts that end within the window, each from its own beginning.
    active = (stops[-(len(begins) - 1) :] - starts[:-1]).sum()
    return [
        numpy.sqrt(vw.dot(vw) / length),
        numpy.sqrt(iw.dot(iw) / length),
        max(abs(lowest), abs(highest)),
        max(abs(i.min()), abs(i.max())),
        vw.dot(iw) / length,
        (len(begins) - 1) / (length * interval),
        active / length,
        len(begins) - 1,
    ]


answer(numpy.__version__, lambda: figures(voltage, current))
