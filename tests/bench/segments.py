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
from scipy.linalg import cho_factor, cho_solve, lapack

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


# The influence matrix of src/electrodes in plain soil, vectorised, in three forms for the mean of 1 / distance of two
# straight lines: "points", eight Gauss points on one and the potential of the other, for all pairs, as in the textbooks;
# "closed", the closed forms that we use, for all pairs; "shortcut", those for near pairs and second moments from four
# lengths on, which is what we do. Of the symmetric matrix only the lower triangle is worked out, in bands of CELLS
# entries, which the cache holds (measured: eight times faster than whole matrices).
CELLS = 16000
FAR = 4.0
PARALLEL = 1.6e-11
POINTS, WEIGHTS = numpy.polynomial.legendre.leggauss(8)


def ramp(u, apart):
    return u * numpy.arcsinh(u / numpy.sqrt(apart)) - numpy.sqrt(u * u + apart)


def parallel_mean(shift, apart, a, b):
    half, less = (a + b) / 2, (a - b) / 2
    total = ramp(shift + half, apart) - ramp(shift + less, apart) - ramp(shift - less, apart) + ramp(shift - half, apart)
    return total / (a * b)


def dot(p, q):
    return p[0] * q[0] + p[1] * q[1] + p[2] * q[2]


def seen(total, length):
    return numpy.log((total + length) / (total - length))


def mean_inverse_distance(way, along_a, along_b, a, b, width):
    """Vectors are three arrays each, that broadcast; `width` is a square."""
    cosine = dot(along_a, along_b)
    sine = 1 - cosine * cosine
    dot_a, dot_b, squared = dot(along_a, way), dot(along_b, way), dot(way, way)
    # cosines of lines that are parallel round to 1 within 1e-15, so that the sine from them serves to tell
    is_parallel = sine < PARALLEL
    sine = numpy.where(is_parallel, 1, sine)
    place_a = (dot_a - cosine * dot_b) / sine
    place_b = (cosine * dot_a - dot_b) / sine
    # the square of the distance of the two lines where they come nearest
    apart = numpy.maximum(0, squared - dot_a * place_a + dot_b * place_b) + width
    a1, a0, b1, b0 = place_a + a / 2, place_a - a / 2, place_b + b / 2, place_b - b / 2
    a1s, a0s, b1s, b0s = a1 * a1, a0 * a0, b1 * b1, b0 * b0
    d11 = numpy.sqrt(a1s + b1s + apart - 2 * cosine * (a1 * b1))
    d10 = numpy.sqrt(a1s + b0s + apart - 2 * cosine * (a1 * b0))
    d01 = numpy.sqrt(a0s + b1s + apart - 2 * cosine * (a0 * b1))
    d00 = numpy.sqrt(a0s + b0s + apart - 2 * cosine * (a0 * b0))
    sides = a1 * seen(d11 + d10, b) - a0 * seen(d01 + d00, b) + b1 * seen(d11 + d01, a) - b0 * seen(d10 + d00, a)
    level, scale = apart * cosine, numpy.sqrt(apart * sine)
    solid = (
        numpy.arctan((level + a1 * b1 * sine) / (scale * d11))
        - numpy.arctan((level + a1 * b0 * sine) / (scale * d10))
        - numpy.arctan((level + a0 * b1 * sine) / (scale * d01))
        + numpy.arctan((level + a0 * b0 * sine) / (scale * d00))
    )
    mean = (sides - solid * numpy.sqrt(apart / sine)) / (a * b)
    at = numpy.nonzero(is_parallel)
    dot_a, squared, width, a, b = (numpy.broadcast_to(x, mean.shape)[at] for x in (dot_a, squared, width, a, b))
    mean[at] = parallel_mean(dot_a, numpy.maximum(0, squared - dot_a * dot_a) + width, a, b)
    return mean


def mean_by_points(way, along_a, along_b, a, b, width):
    total = 0
    for point, weight in zip(POINTS, WEIGHTS):
        at = [x + (point / 2) * a * u for x, u in zip(way, along_a)]
        shift = dot(at, along_b)
        apart = numpy.maximum(0, dot(at, at) - shift * shift) + width
        ends = numpy.sqrt(apart + (shift + b / 2) ** 2) + numpy.sqrt(apart + (shift - b / 2) ** 2)
        total = total + weight * seen(ends, b)
    return total / (2 * b)


def far_mean(way, along_a, along_b, a, b, squared):
    inverse = 1 / squared
    moments = (a * a / 24) * (3 * dot(along_a, way) ** 2 * inverse - 1)
    moments += (b * b / 24) * (3 * dot(along_b, way) ** 2 * inverse - 1)
    return numpy.sqrt(inverse) * (1 + moments * inverse)


def near_or_far(way, along_a, along_b, a, b, width):
    squared = dot(way, way)
    near = numpy.nonzero(squared < (FAR * numpy.maximum(a, b)) ** 2)
    squared[near] = 1
    mean = far_mean(way, along_a, along_b, a, b, squared)
    pick = lambda x: numpy.broadcast_to(x, mean.shape)[near]
    vectors = ([pick(x) for x in vector] for vector in (way, along_a, along_b))
    mean[near] = mean_inverse_distance(*vectors, pick(a), pick(b), pick(width))
    return mean


forms = {"points": mean_by_points, "closed": mean_inverse_distance, "shortcut": near_or_far}


def influence(site, ohm_m, mean_of):
    length, radius = site["length"], site["radius"]
    middle, along = (site[key].reshape(-1, 3).T for key in ("middle", "along"))
    count = len(length)
    matrix = numpy.empty((count, count))
    end = 0
    while end < count:
        start, end = end, min(count, end + max(1, CELLS // (end + 100)))
        rows, columns = slice(start, end), slice(0, end)
        a, b = length[rows, None], length[None, columns]
        width = (radius[rows, None] ** 2 + radius[None, columns] ** 2) / 2
        along_a = along[:, rows, None]
        level = [middle[axis, rows, None] - middle[axis, None, columns] for axis in (0, 1)]
        total = 0
        for sign in (1.0, -1.0):
            way = (*level, middle[2, rows, None] - sign * middle[2, None, columns])
            along_b = (along[0, None, columns], along[1, None, columns], sign * along[2, None, columns])
            total = total + mean_of(way, along_a, along_b, a, b, width)
        numpy.multiply(total, ohm_m / (4 * numpy.pi), out=matrix[rows, columns])
    return matrix


def segments(asked):
    """Matrix of a site in plain soil and its solve; the check is the resistance of all segments joined."""
    if "site" in asked:
        kept[asked["name"]] = {key: numpy.array(rows) for key, rows in asked["site"].items()}
    site = kept[asked["name"]]
    start = time.perf_counter()
    matrix = influence(site, asked["ohmM"], forms[asked["form"]])
    factor = cho_factor(matrix, lower=True, overwrite_a=True, check_finite=False)
    amperes = cho_solve(factor, numpy.ones(len(matrix)), check_finite=False)
    return time.perf_counter() - start, 1 / float(amperes.sum())


works = {"cholesky": cholesky, "segments": segments}

file, config, threads = blas()
print(
    json.dumps({"numpy": numpy.__version__, "scipy": scipy.__version__, "blas": file, "config": config, "threads": threads}),
    flush=True,
)
for line in sys.stdin:
    asked = json.loads(line)
    taken, check = works[asked["work"]](asked)
    print(json.dumps({"ms": taken * 1000, "check": check}), flush=True)
