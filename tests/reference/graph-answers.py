"""Answers questions about multigraphs with networkx; reads one JSON list of questions, writes one JSON list of answers.

Where networkx would merge parallel bonds, each bond is handed over as a node of its own, joined to its two ends. A bond
from a node to itself becomes two nodes, so that it stays a ring and no dead end.
"""

import json
import sys

import networkx as nx
from networkx.algorithms.connectivity import local_edge_connectivity, local_node_connectivity

UNKNOWN = 2.0**20  # more than any sum of lengths asked about, and exact


def split(question):
    graph = nx.Graph()
    graph.add_nodes_from(("node", n) for n in question["nodes"])
    for key, a, b, _ in question["edges"]:
        if a == b:
            nx.add_cycle(graph, [("node", a), ("bond", key, 1), ("bond", key, 2)])
        else:
            nx.add_path(graph, [("node", a), ("bond", key), ("node", b)])
    return graph


def plain(question):
    graph = nx.Graph()
    graph.add_nodes_from(question["nodes"])
    graph.add_edges_from((a, b) for _, a, b, _ in question["edges"] if a != b)
    return graph


def cut_edges(question):
    bridges = {frozenset(bridge) for bridge in nx.bridges(split(question))}

    def is_bridge(key, end):
        return frozenset([("node", end), ("bond", key)]) in bridges

    return sorted(key for key, a, b, _ in question["edges"] if a != b and is_bridge(key, a) and is_bridge(key, b))


def separate_ways(question, a, b):
    """Most ways that share no bond and no breakable node: the greatest flow. No capacity means no limit."""
    flow = nx.DiGraph()
    for n in question["nodes"]:
        limit = {"capacity": 1} if n in question["breakable"] and n not in (a, b) else {}
        flow.add_edge(("in", n), ("out", n), **limit)
    for key, x, y, _ in question["edges"]:
        if x == y:
            continue
        flow.add_edge(("bond in", key), ("bond out", key), capacity=1)
        for n in (x, y):
            flow.add_edge(("out", n), ("bond in", key))
            flow.add_edge(("bond out", key), ("in", n))
    return nx.maximum_flow_value(flow, ("out", a), ("in", b))


def ways(question):
    a, b = question["pair"]
    graph = split(question)
    return {
        "edge": local_edge_connectivity(graph, ("node", a), ("node", b)),
        "node": local_node_connectivity(graph, ("node", a), ("node", b)),
        "separate": separate_ways(question, a, b),
    }


def distances(question):
    """From the targets outward; what may not be passed has no way out, unless it is a target."""
    graph = nx.MultiDiGraph()
    graph.add_nodes_from(question["nodes"])
    for key, a, b, length in question["edges"]:
        for start, end in ((a, b), (b, a)):
            if start in question["targets"] or start not in question["ends"]:
                graph.add_edge(start, end, weight=UNKNOWN if length is None else length)
    found = nx.multi_source_dijkstra_path_length(graph, set(question["targets"]))
    return {n: [cost // UNKNOWN, cost % UNKNOWN] for n, cost in found.items()}


def answer(question):
    return {
        "groups": sorted(sorted(group) for group in nx.connected_components(plain(question))),
        "cutEdges": cut_edges(question),
        "cutNodes": sorted(nx.articulation_points(plain(question))),
        "ways": ways(question) if question["pair"] else None,
        "distances": distances(question),
    }


json.dump({"version": nx.__version__, "answers": [answer(q) for q in json.load(sys.stdin)]}, sys.stdout)
