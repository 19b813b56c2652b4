import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { foldedStrikeDoubt } from './strike-doubt.ts';

/** Ours: what three centimetres of air between corners stand, at the 5 kV a centimetre that a spark needs to cross (from memory). */
const mostV = 15e3;

export const entryLeadVolts = rule({
  id: 'entry-lead-volts',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'three centimetres of air about a panel', edition: null, clause: null, provenance: 'ours' },
  needs: ['sections', 'site', 'strike', 'electrodes'],
  check(facts) {
    const { site, sections, electrodes } = facts;
    const panels = site.bars.filter((bar) => bar.kind === 'entry panel' && bar.present !== 'no');
    if (panels.length === 0 || site.supports.length + site.antennas.length === 0) {
      return nothingThere({ sections }, 'bars');
    }
    const { strike } = facts;
    const doubts = foldedStrikeDoubt({ strike, site, sections, electrodes });
    if (doubts !== null) return doubts;
    // one without a way into the soil is found by the rule that asks for the tie
    if (strike.leads.length === 0) return [{ is: 'not applicable', because: { key: 'no lead' } }];
    return strike.leads.map(({ bar, lengthM, peak }): Verdict => {
      const leadV = Math.abs(peak.value);
      const measured = { key: 'leadV', value: leadV, limit: mostV, sense: 'most' } as const;
      if (leadV <= mostV) return { is: 'met', at: [bar], because: { key: 'short' }, measured };
      return { is: 'not met', at: [bar], because: { key: 'long', values: { leadV, lengthM } }, measured };
    });
  },
});
