import { type FactoredMatrix, factorLu, solveFactored } from '../math/dense.ts';
import { stepPoints } from './port-step.ts';
import {
  addInput,
  keptStates,
  type PortSystem,
  portBlock,
  portSystem,
  portVolts,
  type StepInput,
  slopesOf,
} from './port-system.ts';
import { radauParabolas, radauPoints } from './radau.ts';
import type { SurgeCourse } from './surge-course.ts';
import type { SurgeRun } from './surge-run.ts';
import { sampledWave } from './surge-steps.ts';
import { currentAt, slopeAt } from './wave.ts';

/** Capacitance of a node to remote earth: with the inductances between such nodes a chain in which waves travel. */
export interface ChainNode {
  readonly node: number;
  readonly farad: number;
}

/** Nodes with a charge, and what a charge on each puts on every one, volt per coulomb, row by row. */
export interface ChargedNodes {
  readonly nodes: readonly number[];
  readonly elastance: Float64Array;
}

/**
 * The same stroke with capacitances to remote earth at some nodes of a network that is solved without them: their currents and
 * the network agree at the Radau points of each step. A line cut into sections, its inductance between nodes and its capacitance
 * at them, is a chain in which a wave runs at the speed of the line, as long as a section is short against the front. RangeError:
 * a capacitance that is not above zero, or a node that is not there.
 */
export function chainRun(run: SurgeRun, chain: readonly ChainNode[]): SurgeCourse {
  if (chain.some(({ farad }) => !(farad > 0 && Number.isFinite(farad)))) throw new RangeError('no such capacitance');
  const count = chain.length;
  const elastance = new Float64Array(count * count);
  chain.forEach(({ farad }, c) => {
    elastance[c * (count + 1)] = 1 / farad;
  });
  return chargedRun(run, { nodes: chain.map(({ node }) => node), elastance });
}

/** The same where charges of all nodes are felt by all: the volts of the nodes are the elastance times their charges. */
export function chargedRun(run: SurgeRun, charged: ChargedNodes): SurgeCourse {
  const { nodes } = charged;
  const system = portSystem(
    run,
    nodes.map((node) => ({ from: node, to: null })),
  );
  const { modes } = run;
  const wave = sampledWave(run.source.wave, run.wave);
  const times = wave.timesS.length;
  const z = new Float64Array(times * modes.count);
  const held = { volts: new Float64Array(nodes.length), currentA: new Float64Array(nodes.length) };
  const inputs = system.ports.map(({ drive }) => ({
    drive,
    value: new Float64Array(times),
    slope: new Float64Array(times),
  }));
  const step = chainStep(system, charged, run.source.wave);
  for (let t = 1; t < times; t++) {
    const stepS = wave.stepS[t]!;
    const before = z.subarray((t - 1) * modes.count, t * modes.count);
    const after = step(before, held, { startS: wave.timesS[t]! - stepS, stepS });
    z.set(after.z, t * modes.count);
    after.currents.forEach((values, c) => {
      held.volts[c] = after.volts[c]!;
      held.currentA[c] = values[3]!;
      inputs[c]!.value[t] = values[3]!;
      inputs[c]!.slope[t] = slopesOf(values, stepS)[3]!;
    });
  }
  const source = { drive: run.drive, value: wave.currentA, slope: wave.slopeAPerS };
  return { ...run, wave, z, inputs: [source, ...inputs] };
}

interface Held {
  readonly volts: Float64Array;
  readonly currentA: Float64Array;
}

interface SteppedChain {
  /** Modes at the end. */
  readonly z: Float64Array;
  /** Of each capacitance at `stepPoints`, and its volts at the end. */
  readonly currents: readonly Float64Array[];
  readonly volts: Float64Array;
}

function chainStep(system: PortSystem, charged: ChargedNodes, wave: SurgeRun['source']['wave']) {
  const { ports, source, stepOf } = system;
  const factorOf = chainFactors(system, charged);
  const { nodes } = charged;
  return (
    before: Float64Array,
    { volts, currentA }: Held,
    { startS, stepS }: { readonly startS: number; readonly stepS: number },
  ): SteppedChain => {
    const step = stepOf(stepS);
    const timesS = stepPoints.map((point) => startS + point * stepS);
    const stroke: StepInput = {
      drive: source,
      values: Float64Array.from(timesS, (time) => currentAt(wave, time)),
      slopes: Float64Array.from(timesS, (time) => slopeAt(wave, time)),
    };
    const currents = nodes.map((_, c) => Float64Array.of(currentA[c]!, 0, 0, 0));
    const inputs = () => [
      stroke,
      ...ports.map(({ drive }, c) => ({ drive, values: currents[c]!, slopes: slopesOf(currents[c]!, stepS) })),
    ];
    const statesUnder = (given: readonly StepInput[]) => {
      const z = keptStates(step, before);
      for (const input of given) addInput(step, input, z);
      return z;
    };
    const begun = inputs();
    const open = statesUnder(begun);
    const wanted = Float64Array.from({ length: 3 * nodes.length }, (_, at) => {
      const c = Math.floor(at / 3);
      return volts[c]! - portVolts(ports[c]!, open[at % 3]!, begun, at % 3);
    });
    const { solution } = solveFactored(factorOf(stepS), wanted);
    nodes.forEach((_, c) => {
      currents[c]!.set(solution.subarray(3 * c, 3 * c + 3), 1);
    });
    const all = inputs();
    const z = statesUnder(all);
    return { z: z[2]!, currents, volts: Float64Array.from(ports, (port) => portVolts(port, z[2]!, all, 2)) };
  };
}

/** What the network shows its ports less what the charges put on them within a step, by the length of the step. */
function chainFactors(system: PortSystem, { nodes, elastance }: ChargedNodes): (stepS: number) => FactoredMatrix {
  const known = new Map<number, FactoredMatrix>();
  const count = nodes.length;
  return (stepS) => {
    const found = known.get(stepS);
    if (found !== undefined) return found;
    const size = 3 * count;
    const ohm = new Float64Array(size * size);
    for (let p = 0; p < count; p++) {
      for (let n = 0; n < count; n++) {
        const block = portBlock(system, stepS, p, n);
        const byCharge = stepS * elastance[p * count + n]!;
        for (let at = 0; at < 9; at++) {
          const [s, q] = [Math.floor(at / 3), at % 3];
          ohm[(3 * p + s) * size + 3 * n + q] = block[at]! - byCharge * gathered[s]![q]!;
        }
      }
    }
    const factor = factorLu(ohm, size);
    if (!factor.ok) throw new RangeError('two capacitances at one node');
    known.set(stepS, factor);
    return factor;
  };
}

/** gathered[s][q]: integral up to point s, by the share of the step, of the parabola that is 1 at point q. */
const gathered = radauPoints.map((share) =>
  radauParabolas.map(([c0, c1, c2]) => share * (c0 + share * (c1 / 2 + (share * c2) / 3))),
);

/**
 * Capacitances of a straight line cut into equal sections (their nodes from end to end), half a section's at either end: the
 * total is such that a wave passes the whole in the given time with the given inductance, C = T^2 / L.
 */
export function chainOf(nodes: readonly number[], inductanceH: number, delayS: number): readonly ChainNode[] {
  const section = delayS ** 2 / inductanceH / (nodes.length - 1);
  return nodes.map((node, i) => ({ node, farad: i === 0 || i === nodes.length - 1 ? section / 2 : section }));
}
