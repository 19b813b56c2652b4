import { ask, below, type Spot } from '../reading/report.ts';
import { childOf } from '../reading/tree.ts';
import type { Checked } from './checked.ts';

/** Sea water has 0.2 ohm m, dry or frozen rock up to some 100 000 (from memory): a figure far beyond is a slip. */
const leastOhmM = 0.05;
const mostOhmM = 1e6;

/** Asks about a layer with a resistivity that nothing underfoot has. */
export function askSoil({ typed, report }: Checked): void {
  const node = typed.soil === null ? null : childOf(typed.soil.node, 'layers');
  if (node?.is !== 'list') return;
  const layers: Spot = { path: 'soil.layers', report };
  node.items.forEach((item, i) => {
    const ohmM = typed.soil!.values.layers?.[i]?.resistivity ?? null;
    const at = item.is === 'map' ? childOf(item, 'resistivity')?.at : undefined;
    if (ohmM === null || at === undefined) return;
    const isOdd = ohmM.low > mostOhmM || (ohmM.high > mostOhmM && ohmM.high !== Infinity) || ohmM.high < leastOhmM;
    if (isOdd) ask(below(below(layers, i + 1), 'resistivity'), at, 'resistivity-odd');
  });
}
