"""How a peer answers: `values FILE` writes its results as 64-bit numbers, `run` answers seconds and sum."""

import sys
import time

import numpy


def answer(version, work):
    """`work` does everything once and returns a list of arrays or numbers."""
    print(version, flush=True)
    for line in sys.stdin:
        words = line.split()
        if words[0] == "values":
            numpy.hstack(work()).astype(float).tofile(words[1])
            print("written", flush=True)
        else:
            start = time.perf_counter()
            total = float(sum(numpy.sum(part) for part in work()))
            print(time.perf_counter() - start, repr(total), flush=True)
