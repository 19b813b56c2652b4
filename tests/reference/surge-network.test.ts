import { describe, expect, it } from 'vitest';
import { peakOf } from '../../src/surge/peak-of.ts';
import { currentFigure, overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import type { Wave } from '../../src/surge/wave.ts';
import { wave0p25x100, wave1x200, wave8x20, wave10x350 } from '../../src/surge/wave-presets.ts';
import { random } from '../network/random.ts';
import { caseNetwork, caseWave } from '../surge/case-network.ts';
import { lightningCases } from '../surge/lightning-cases.ts';
import { modesOf, peakPotential } from '../surge/modes-of.ts';
import { randomNetwork } from '../surge/random-network.ts';
import { beforeShortLead, withShortLead } from '../surge/rising-peak.ts';
import { findNgspice } from './ngspice.ts';
import { branchVector, type NamedNetwork, ngspiceNetlist, nodeVector } from './ngspice-netlist.ts';

const ngspice = findNgspice('networks under a stroke against ngspice');

type Answer = ReadonlyMap<string, Float64Array>;

/** Largest gap of any peak or last value of a node or a branch, relative to its own peak, or to what a millionth of the stroke would make. */
function gap(named: NamedNetwork, wave: Wave, untilS: number, answer: Answer): number {
  const modes = modesOf(named.network);
  const run = surgeRun(modes, { node: named.into, wave, channelH: null }, { untilS });
  const { branches, earth, nodeCount } = named.network;
  const volts = Array.from({ length: nodeCount }, (_, node) => [
    overTime(run, potentialFigure(run, node)),
    answer.get(nodeVector(named, node))!,
  ]);
  const amps = branches.map((_, branch) => {
    const weights = new Float64Array(branches.length + earth.nodes.length);
    weights[branch] = 1;
    return [overTime(run, currentFigure(run, weights)), answer.get(branchVector(named, branch))!];
  });
  const times = [run.wave.timesS, answer.get('time')!] as const;
  return Math.max(largestGap(times, volts, 1e-6 * wave.peakA), largestGap(times, amps, 1e-6 * wave.peakA));
}

function largestGap(
  [timesS, theirTimesS]: readonly [Float64Array, Float64Array],
  pairs: readonly (readonly Float64Array[])[],
  least: number,
): number {
  return Math.max(
    ...pairs.map(([ours, theirs]) => {
      const [own, other] = [peakOf(timesS, ours!).value, peakOf(theirTimesS, theirs!).value];
      // two peaks of nearly one size and other sign: whichever is found
      const apart = Math.abs(Math.abs(own) - Math.abs(other));
      return Math.max(apart, Math.abs(ours!.at(-1)! - theirs!.at(-1)!)) / Math.max(Math.abs(other), least);
    }),
  );
}

describe.skipIf(ngspice === null)(`against ngspice${ngspice === null ? ' (SKIPPED: no ngspice)' : ''}`, () => {
  it.each(lightningCases)('$title: every node and branch to 0.1 %', (found) => {
    const made = caseNetwork(found);
    const wave = caseWave(found);
    const untilS = found.windowUs * 1e-6;
    const named = { name: 'a', network: made.network, into: made.nodes.indexOf(found.into) };
    const answer = ngspice!.run(ngspiceNetlist([named], wave, untilS, untilS / 5000));
    expect(gap(named, wave, untilS, answer)).toBeLessThan(1e-3);
  });

  it('the ring with the segment beside the struck corner cut: 516.7 kV at the top, 151.8 kV across', () => {
    const ring = lightningCases.find(({ title }) => title.includes('ring'))!;
    const cut = { ...ring, branches: ring.branches.replace('r8 N8-N1 2 5.5; ', '') };
    const made = caseNetwork(cut);
    const wave = caseWave(cut);
    const named = { name: 'a', network: made.network, into: made.nodes.indexOf('D') };
    const answer = ngspice!.run(ngspiceNetlist([named], wave, 100e-6, 20e-9));
    const [top, n1, n5] = ['D', 'N1', 'N5'].map((node) => answer.get(nodeVector(named, made.nodes.indexOf(node)))!);
    const times = answer.get('time')!;
    const across = n1!.map((volt, t) => volt - n5![t]!);
    expect([top!, across].map((volt) => (peakOf(times, volt).value / 1e3).toFixed(1))).toEqual(['516.7', '151.8']);
    expect(gap(named, wave, 100e-6, answer)).toBeLessThan(1e-3);
  });

  it('a short lead more to a poor electrode raises the peak of the struck node there too', () => {
    const wave = wave1x200(1e3);
    const both = [beforeShortLead, withShortLead].map((network, i) => ({ name: `p${i}`, network, into: 0 }));
    const answer = ngspice!.run(ngspiceNetlist(both, wave, 10e-6, 2e-9));
    const peaks = both.map((named) => peakOf(answer.get('time')!, answer.get(nodeVector(named, 0))!).value);
    expect(peaks[1]! / peaks[0]!).toBeGreaterThan(1.03);
    both.forEach(({ network }, i) => {
      expect(Math.abs(peakPotential(network, 0, wave, 10e-6) / peaks[i]! - 1)).toBeLessThan(1e-4);
    });
  });

  it.each([
    ['10/350', wave10x350(100e3), 60e-6],
    ['1/200', wave1x200(50e3), 6e-6],
    ['0.25/100', wave0p25x100(25e3), 1.5e-6],
    ['8/20', wave8x20(10e3), 30e-6],
  ] as const)(
    '60 random networks, 50 of them coupled, under %s to 0.1 %%: nodes and branches',
    (name, wave, untilS) => {
      const next = random(name.length + 17);
      const networks = Array.from({ length: 60 }, (_, i): NamedNetwork => {
        const nodes = 2 + Math.floor(next() * 6);
        const network = randomNetwork(next, {
          nodes,
          more: Math.floor(next() * 4),
          electrodes: 1 + Math.floor(next() * 3),
          coupled: i % 6 !== 0,
          soil: i % 3 === 0,
        });
        return { name: `n${i}`, network, into: Math.floor(next() * nodes) };
      });
      const answer = ngspice!.run(ngspiceNetlist(networks, wave, untilS, untilS / 2000));
      const gaps = networks.map((named) => gap(named, wave, untilS, answer));
      expect(Math.max(...gaps)).toBeLessThan(1e-3);
    },
  );
});
