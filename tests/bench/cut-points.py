"""Times python3-igraph's bridges and articulation points on the edge list given as a file: once for each line read.

Prints JSON lines: first the version and what was found, then milliseconds.
"""

import json
import sys
import time

import igraph

with open(sys.argv[1], encoding="ascii") as file:
    node_count, pairs = json.load(file)
graph = igraph.Graph(n=node_count, edges=pairs)
found = {"version": igraph.__version__, "edges": sorted(graph.bridges()), "nodes": sorted(graph.articulation_points())}
print(json.dumps(found), flush=True)

for _ in sys.stdin:
    start = time.perf_counter()
    graph.bridges()
    graph.articulation_points()
    print(json.dumps((time.perf_counter() - start) * 1000), flush=True)
