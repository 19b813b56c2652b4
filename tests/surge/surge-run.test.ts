import { describe, expect, it } from 'vitest';
import { peakOf } from '../../src/surge/peak-of.ts';
import { overTime } from '../../src/surge/surge-figure.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { caseFigure } from './case-figure.ts';
import { caseNetwork, caseWave } from './case-network.ts';
import { lightningCases } from './lightning-cases.ts';
import { modesOf } from './modes-of.ts';

/** Half a unit of the last printed digit. */
function halfDigit(text: string): number {
  return 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0);
}

describe.each(lightningCases)('$title', (found) => {
  const made = caseNetwork(found);
  const modes = modesOf(made.network);
  const source = { node: made.nodes.indexOf(found.into), wave: caseWave(found), channelH: null };
  const run = surgeRun(modes, source, { untilS: found.windowUs * 1e-6 });

  it.each(found.peaks.split('; ').map((text) => text.split(' ')))(
    '%s peaks at %s kV or kA, %s us',
    (what, kilo, us) => {
      const peak = peakOf(run.wave.timesS, overTime(run, caseFigure(run, made, what!)));
      expect(Math.abs(peak.value / (Number(kilo) * 1e3) - 1)).toBeLessThan(1e-3);
      expect(Math.abs(peak.atS * 1e6 - Number(us))).toBeLessThan(1e-3 + halfDigit(us!));
    },
  );

  it('balances its energy and says how exact it is', () => {
    expect(run.energyShare).toBeLessThan(1e-3);
    expect(run.errorShare).toBeLessThan(1e-3);
  });
});
