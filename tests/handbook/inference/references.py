"""The worked models of tests/support/worked-models.ts as Bayesian networks, answered by two libraries.

In a fresh environment: pip install pgmpy pyagrum, then python references.py > references.json
"""

import importlib.metadata
import json
import math
import sys

import numpy as np
import pyagrum
from pgmpy.factors.discrete import TabularCPD
from pgmpy.inference import VariableElimination
from pgmpy.models import DiscreteBayesianNetwork

REUSE = math.exp(-1 / 40)
LATER_WORK = 0.3


class Network:
    """Variables by name: parents and a table with one axis for the variable, then one for each parent."""

    def __init__(self):
        self.tables = {}

    def add(self, name, parents, table):
        table = np.asarray(table, dtype=float)
        assert np.allclose(table.sum(axis=0), 1), name
        self.tables[name] = (parents, table)


def later(years):
    """P(u | t): any year after t alike; at the last, that year."""
    table = np.zeros((years, years))
    for t in range(years):
        if t == years - 1:
            table[t, t] = 1
        else:
            table[t + 1 :, t] = 1 / (years - 1 - t)
    return table


def earlier(years):
    """P(u | t): older by a geometric age, cut off at the first year; there, that year."""
    table = np.zeros((years, years))
    table[0, 0] = 1
    for t in range(1, years):
        ages = np.arange(1, t + 1)
        weights = (1 - REUSE) * REUSE ** (ages - 1)
        table[t - ages, t] = weights / weights.sum()
    return table


def add_part(net, name, years, prior, features, place=None):
    """A part in a state, made in a year; a feature of a reworked part may be of a later year still.

    features: name -> P(seen | year of the work), or one such array for each place.
    """
    net.add(f"{name}.state", [], prior)
    made = np.zeros((years, years, len(prior)))
    made[:, :, 0] = np.eye(years)
    made[:, :, 1] = later(years)
    made[:, :, 2] = earlier(years)
    if len(prior) == 4:
        made[:, :, 3] = np.eye(years)
    net.add(f"{name}.made", ["t", f"{name}.state"], made)
    for feature, seen in features.items():
        worked = f"{name}.made"
        if len(prior) == 4:
            worked = f"{feature}.worked"
            table = np.zeros((years, years, len(prior)))
            for state in range(3):
                table[:, :, state] = np.eye(years)
            table[:, :, 3] = (1 - LATER_WORK) * np.eye(years) + LATER_WORK * later(years)
            net.add(worked, [f"{name}.made", f"{name}.state"], table)
        seen = np.asarray(seen)
        if place is None:
            net.add(feature, [worked], [1 - seen, seen])
        else:
            net.add(feature, [worked, place], [1 - seen.T, seen.T])


def step(years, first, last, inside, outside):
    at = 1700 + np.arange(years)
    return np.where((at >= first) & (at <= last), inside, outside)


def chest(rho=(0.8, 0.17, 0.03)):
    net = Network()
    net.add("t", [], np.full(200, 1 / 200))
    add_part(net, "carcase", 200, (0.95, 0.03, 0.02), {"pit": step(200, 1700, 1800, 0.9, 0.05)})
    add_part(
        net,
        "drawers",
        200,
        rho,
        {"arc": step(200, 1815, 1899, 0.9, 0.02), "dovetail": step(200, 1700, 1830, 0.9, 0.2)},
    )
    add_part(net, "brasses", 200, (0.6, 0.37, 0.03), {"oval": step(200, 1780, 1800, 0.9, 0.03)})
    return net, ["pit", "arc", "dovetail", "oval"], ["carcase", "drawers", "brasses"]


def one_tool(traces):
    net = Network()
    net.add("t", [], np.full(200, 1 / 200))
    used = step(200, 1800, 1899, 0.98, 0.02)
    net.add("used", ["t"], [1 - used, used])
    for i in range(traces):
        net.add(f"trace{i}", ["used"], [[0.95, 0.1], [0.05, 0.9]])
    return net, [f"trace{i}" for i in range(traces)], []


def one_source():
    net = Network()
    net.add("t", [], np.full(200, 1 / 200))
    net.add("right", [], [0.1, 0.9])
    for name in "abc":
        seen = np.stack([np.full(200, 0.5), step(200, 1800, 1899, 1, 0.01)], axis=1)
        net.add(name, ["t", "right"], [1 - seen, seen])
    return net, list("abc"), []


def two_places():
    net = Network()
    net.add("t", [], np.full(40, 1 / 40))
    net.add("place", [], [0.3, 0.7])
    joint = [step(40, 1700, 1720, 0.8, 0.1), step(40, 1705, 1712, 0.8, 0.1)]
    saw = [step(40, 1725, 1739, 0.7, 0.02), step(40, 1710, 1739, 0.7, 0.02)]
    nail = [step(40, 1715, 1739, 0.6, 0.05)] * 2
    add_part(net, "side", 40, (0.855, 0.095, 0.0, 0.05), {"joint": joint}, "place")
    add_part(net, "back", 40, (0.6, 0.25, 0.1, 0.05), {"saw": saw, "nail": nail}, "place")
    return net, ["joint", "saw", "nail"], ["side", "back"]


def by_pgmpy(net, seen, asked):
    model = DiscreteBayesianNetwork([(parent, name) for name, (parents, _) in net.tables.items() for parent in parents])
    model.add_nodes_from(net.tables)
    for name, (parents, table) in net.tables.items():
        shape = table.shape
        model.add_cpds(
            TabularCPD(name, shape[0], table.reshape(shape[0], -1), parents or None, shape[1:] or None)
        )
    infer = VariableElimination(model)
    evidence = {name: 1 for name in seen}
    answers = {name: infer.query([name], evidence, show_progress=False).values.tolist() for name in asked}
    joint = infer.query(seen, show_progress=False)
    probability = float(joint.get_value(**evidence))
    return probability, answers


def by_pyagrum(net, seen, asked):
    model = pyagrum.BayesNet()
    for name, (_, table) in net.tables.items():
        model.add(pyagrum.RangeVariable(name, name, 0, table.shape[0] - 1))
    for name, (parents, _) in net.tables.items():
        for parent in parents:
            model.addArc(parent, name)
    for name, (parents, table) in net.tables.items():
        # Its arrays have the parents first, the last of them outermost.
        order = list(model.cpt(name).names)
        axes = [([name] + parents).index(one) for one in order]
        model.cpt(name)[:] = np.ascontiguousarray(np.transpose(table, axes[::-1]))
    infer = pyagrum.LazyPropagation(model)
    infer.setEvidence({name: 1 for name in seen})
    infer.makeInference()
    return infer.evidenceProbability(), {name: infer.posterior(name).tolist() for name in asked}


def answer(net, seen, parts):
    asked = ["t"] + [f"{part}.state" for part in parts] + [f"{part}.made" for part in parts]
    asked += [name for name in ("place", "right") if name in net.tables]
    found = {}
    for library, work in (("pgmpy", by_pgmpy), ("pyagrum", by_pyagrum)):
        probability, answers = work(net, seen, asked)
        found[library] = {"evidence": probability, **answers}
    return found


MODELS = {
    "chest": chest(),
    "chest, half as many later drawers": chest((0.885, 0.085, 0.03)),
    "chest, twice as many later drawers": chest((0.63, 0.34, 0.03)),
    "one tool, 1 trace": one_tool(1),
    "one tool, 2 traces": one_tool(2),
    "one tool, 5 traces": one_tool(5),
    "one source": one_source(),
    "two places": two_places(),
}
versions = {name: importlib.metadata.version(name) for name in ("pgmpy", "pyagrum")}
rounded = json.loads(json.dumps({name: answer(*model) for name, model in MODELS.items()}), parse_float=lambda x: float(f"{float(x):.10g}"))
json.dump({"python": sys.version.split()[0], "versions": versions, "models": rounded}, sys.stdout, separators=(",", ":"))
print()
