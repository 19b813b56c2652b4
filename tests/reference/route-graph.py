"""Shortest ways and cheapest trees in weighted graphs with networkx; reads a JSON list of graphs, writes a list of answers.

{"count": n, "edges": [[a, b, cost]], "ends": [node]} gives {"ways": cost from the first end to each node or null,
"tree": cost of the cheapest tree over the ends or null}. The tree is the least minimum spanning tree over the ends and
each set of other nodes (a cheapest tree is a minimum spanning tree of its own nodes).
"""

import itertools
import json
import sys

import networkx as nx


def tree(graph, ends):
    others = [n for n in graph if n not in ends]
    best = None
    for size in range(len(others) + 1):
        for chosen in itertools.combinations(others, size):
            part = graph.subgraph([*ends, *chosen])
            if not nx.is_connected(part):
                continue
            cost = nx.minimum_spanning_tree(part).size(weight="weight")
            best = cost if best is None else min(best, cost)
    return best


def answer(question):
    graph = nx.Graph()
    graph.add_nodes_from(range(question["count"]))
    for a, b, cost in question["edges"]:
        if not graph.has_edge(a, b) or graph[a][b]["weight"] > cost:
            graph.add_edge(a, b, weight=cost)
    ends = question["ends"]
    ways = nx.single_source_dijkstra_path_length(graph, ends[0])
    wanted = question.get("tree", True)
    return {
        "ways": [ways.get(n) for n in range(question["count"])],
        "tree": tree(graph, sorted(set(ends))) if wanted else None,
    }


json.dump([answer(q) for q in json.load(sys.stdin)], sys.stdout)
