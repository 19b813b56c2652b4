import { expect, it } from 'vitest';
import { surgeImpedance } from '../../src/surge/surge-impedance.ts';
import { oneAmpere, solve } from '../currents/networks.ts';
import { caseNetwork } from './case-network.ts';
import { lightningCases } from './lightning-cases.ts';
import { modesOf } from './modes-of.ts';

it.each(lightningCases)('$title: at 1 A of direct current the printed figures, by either solve', (found) => {
  const { network, nodes, names } = caseNetwork(found);
  const [volts, amps] = found.direct.split('; ').map((list) => list.split(', ').map((text) => text.split(' ')));
  const into = nodes.indexOf(found.into);
  const { potentialV, branchA } = oneAmpere(solve(network), into);
  for (const [node, volt] of volts!) expect(potentialV[nodes.indexOf(node!)]!.toFixed(6)).toBe(volt);
  for (const [name, ampere] of amps!) expect(branchA[names.indexOf(name!)]!.toFixed(6)).toBe(ampere);
  expect(volts).toHaveLength(network.nodeCount);
  expect(amps).toHaveLength(network.branches.length);
  expect(surgeImpedance(modesOf(network), into, 0).toFixed(6)).toBe(volts!.find(([node]) => node === found.into)![1]);
});
