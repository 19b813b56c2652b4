import { expect, it } from 'vitest';
import { reachInStates } from '../../src/bonding/reach-in-states.ts';
import { readSite } from '../../src/site/read-site.ts';

const text = `
site: {name: Two plugs, units: m, service: panel}
antennas: {beam: {kind: yagi}}
equipment: {panel: {kind: service panel}, radio: {kind: transceiver, where: inside}}
lines:
  feed: {kind: coax, path: [beam, {plug: j1}, radio]}
  cord: {kind: mains, path: [panel, radio], protective_conductor: yes}
states:
  storm: {says: coax pulled, open: [{at: j1, gap: 1 m, end: grounded}]}
  holiday: {says: everything off, open: [{at: j1, gap: 1 m, end: grounded}, "cord:radio"]}
`;

it('tells for every state what a plug leaves behind', () => {
  const { site } = readSite(text, 'plugs');
  const byState = reachInStates(site!).map(({ state, reach }) => [
    state,
    reach.find((r) => r.part === 'radio')?.by.map((b) => b.line),
  ]);
  expect(byState).toEqual([
    [null, ['cord', 'feed']],
    ['storm', ['cord']],
    ['holiday', []],
  ]);
});
