import type { SurgeNetwork } from '../../src/surge/surge-network.ts';

const branch = (to: number, microhenry: number) => ({
  from: 0,
  to,
  resistanceOhm: 5e-3,
  inductanceH: microhenry * 1e-6,
});

/** A struck node with a way to a good electrode and a longer one to a poor one. */
export const beforeShortLead: SurgeNetwork = {
  nodeCount: 3,
  branches: [branch(1, 15), branch(2, 22)],
  mutualH: null,
  earth: { nodes: [1, 2], resistanceOhm: [12, 90] },
};

/** A short lead more to the poor electrode: the long one had kept its current for the time when the other way slackens. */
export const withShortLead: SurgeNetwork = {
  ...beforeShortLead,
  branches: [...beforeShortLead.branches, branch(2, 1)],
};
