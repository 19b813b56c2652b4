import { describe, expect, it } from 'vitest';
import { resistancesToEarth } from '../../src/currents/resistance.ts';
import { currentFigure, overTime } from '../../src/surge/surge-figure.ts';
import { surgeImpedance } from '../../src/surge/surge-impedance.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { wave1x200 } from '../../src/surge/wave-presets.ts';
import { solve } from '../currents/networks.ts';
import { random } from '../network/random.ts';
import { modesOf, peakPotential } from './modes-of.ts';
import { randomNetwork } from './random-network.ts';
import { beforeShortLead, withShortLead } from './rising-peak.ts';

function networks(seed: number, count: number): readonly SurgeNetwork[] {
  const next = random(seed);
  return Array.from({ length: count }, (_, i) =>
    randomNetwork(next, {
      nodes: 2 + Math.floor(next() * 10),
      more: 1 + Math.floor(next() * 5),
      electrodes: 1 + Math.floor(next() * 4),
      coupled: i % 4 !== 0,
      soil: i % 3 === 0,
    }),
  );
}

/** The same without its last branch, which is never needed to reach an electrode. */
function withoutLast({ branches, mutualH, ...rest }: SurgeNetwork): SurgeNetwork {
  const count = branches.length;
  const kept = mutualH?.filter((_, at) => at % count < count - 1 && at < count * (count - 1)) ?? null;
  return { ...rest, branches: branches.slice(0, -1), mutualH: kept };
}

const rounding = 1 + 1e-9;

describe('a conductor more', () => {
  it('never raises the impedance at any node at any real rate, and lowers it somewhere', () => {
    let lowered = 0;
    for (const network of networks(11, 150)) {
      const [more, less] = [modesOf(network), modesOf(withoutLast(network))];
      for (let node = 0; node < network.nodeCount; node++) {
        for (const rate of [0, 1e2, 1e4, 1e5, 1e6, 1e7, 1e9]) {
          const [after, before] = [surgeImpedance(more, node, rate), surgeImpedance(less, node, rate)];
          expect(after).toBeLessThanOrEqual(before * rounding);
          if (after < before * 0.9) lowered++;
        }
      }
    }
    expect(lowered).toBeGreaterThan(500);
  });

  it('never raises the inductance where nothing resists', () => {
    for (const network of networks(12, 100)) {
      const perfect = (net: SurgeNetwork): SurgeNetwork => ({
        ...net,
        branches: net.branches.map((branch) => ({ ...branch, resistanceOhm: 0 })),
        earth: { nodes: net.earth.nodes, resistanceOhm: net.earth.nodes.map(() => 1e-9) },
      });
      const [more, less] = [modesOf(perfect(network)), modesOf(perfect(withoutLast(network)))];
      for (let node = 0; node < network.nodeCount; node++) {
        const [after, before] = [more, less].map((modes) => surgeImpedance(modes, node, 1e6) / 1e6);
        expect(after).toBeLessThanOrEqual(before! * rounding + 1e-15);
      }
    }
  });

  it('may raise a peak: a short lead to a poor electrode', () => {
    const [before, after] = [beforeShortLead, withShortLead].map((net) => peakPotential(net, 0, wave1x200(1e3), 10e-6));
    expect(after! / before!).toBeGreaterThan(1.03);
    for (const rate of [0, 1e4, 1e6, 1e8]) {
      const [less, more] = [beforeShortLead, withShortLead].map((net) => surgeImpedance(modesOf(net), 0, rate));
      expect(more).toBeLessThanOrEqual(less! * rounding);
    }
  });
});

it('has the resistances of the direct-current solve at rate 0', () => {
  for (const network of networks(13, 60)) {
    const modes = modesOf(network);
    const ohms = resistancesToEarth(solve(network));
    ohms.forEach((ohm, node) => {
      expect(Math.abs(surgeImpedance(modes, node, 0) / ohm! - 1)).toBeLessThan(1e-9);
    });
  }
});

it('balances the currents at every node at all times', () => {
  for (const network of networks(14, 30)) {
    const { branches, earth, nodeCount } = network;
    const elements = branches.length + earth.nodes.length;
    const run = surgeRun(modesOf(network), { node: 1, wave: wave1x200(1e3), channelH: null }, { untilS: 20e-6 });
    for (let node = 0; node < nodeCount; node++) {
      const leaving = new Float64Array(elements);
      branches.forEach(({ from, to }, i) => {
        if (from !== to) leaving[i] = from === node ? 1 : to === node ? -1 : 0;
      });
      earth.nodes.forEach((at, i) => {
        if (at === node) leaving[branches.length + i] = 1;
      });
      const sums = overTime(run, currentFigure(run, leaving));
      sums.forEach((sum, t) => {
        expect(Math.abs(sum - (node === 1 ? run.wave.currentA[t]! : 0))).toBeLessThan(1e-9 * 1e3);
      });
    }
    expect(run.energyShare).toBeLessThan(1e-3);
  }
});
