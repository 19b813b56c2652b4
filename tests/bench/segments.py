"""Times LAPACK and numpy on what the soil benches ask: one JSON line in, one out.

First a line of versions, the BLAS that is really mapped into this process, and how many threads it uses. Then for each
line {"work": "cholesky" | "segments", "name", ...}: {"ms", "check"}. What is sent under a name first is kept, so that
reading it is not timed.
"""
import ctypes
import json
import re
import sys
import time

import numpy
import scipy
from scipy.linalg import lapack

kept = {}


def blas():
    """File and threads of the BLAS in use; threads are None where the library does not tell them."""
    with open("/proc/self/maps", encoding="utf8") as maps:
        files = sorted({line.split()[-1] for line in maps if re.search(r"/lib[^/]*(blas|mkl|blis|atlas)[^/]*\.so", line)})
    for file in files:
        library = ctypes.CDLL(file)
        if hasattr(library, "openblas_get_num_threads"):
            library.openblas_get_config.restype = ctypes.c_char_p
            return file, library.openblas_get_config().decode(), library.openblas_get_num_threads()
    return ", ".join(files), "not OpenBLAS", None


def cholesky(asked):
    """dpotrf of 1 / sqrt(distance^2 + width^2) between points; the check is the logarithm of the determinant."""
    if "points" in asked:
        points = numpy.array(asked["points"])
        squared = ((points[:, None] - points[None]) ** 2).sum(-1)
        kept[asked["name"]] = numpy.asfortranarray(1 / numpy.sqrt(squared + asked["width"] ** 2))
    matrix = kept[asked["name"]]
    start = time.perf_counter()
    lower, info = lapack.dpotrf(matrix, lower=1, clean=0)
    taken = time.perf_counter() - start
    if info != 0:
        raise ValueError(f"row {info} failed")
    return taken, 2 * float(numpy.log(numpy.diag(lower)).sum())


works = {"cholesky": cholesky}

file, config, threads = blas()
print(
    json.dumps({"numpy": numpy.__version__, "scipy": scipy.__version__, "blas": file, "config": config, "threads": threads}),
    flush=True,
)
for line in sys.stdin:
    asked = json.loads(line)
    taken, check = works[asked["work"]](asked)
    print(json.dumps({"ms": taken * 1000, "check": check}), flush=True)
