import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import { isAtLeast, scale } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { forLightning } from '../electrode-sizes/for-lightning.ts';
import { routeLength } from '../electrode-sizes/route-length.ts';
import { printedShare } from '../electrodes/driven.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { electrodeAtEachDown } from './electrode-at-each-down.ts';
import { leastLength } from './least-length.ts';

/** The length is waived where the electrode reads less. */
const waivedOhm = 10;

export const typeALength = rule({
  id: 'type-a-length',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: '5.4.2.1, figure 3', provenance: 'memory' },
  limits: [
    { key: 'runLengthM', value: 5, sense: 'least', of: 'a level run' },
    { key: 'rodLengthM', value: 2.5, sense: 'least', of: 'a rod' },
    { key: 'resistanceOhm', value: waivedOhm, sense: 'most', of: 'one of any length' },
  ],
  needs: ['header', 'sections', 'bonding', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const { lightningClass } = claimsOf(facts.header);
    if (lightningClass === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const all = forLightning(facts);
    // A ring or a footing makes it the other type.
    if (all.some((e) => e.part.closed === 'yes' || e.part.kind === 'concrete-encased'))
      return [{ is: 'not applicable', because: { key: 'a ring' } }];
    const asked = all.filter((e) => isRod(e) || e.part.kind === 'buried wire' || e.part.kind === 'radial');
    const bare = electrodeAtEachDown(facts);
    if (asked.length === 0) return bare.length > 0 ? bare : nothingThere(facts, 'electrodes');
    const verdicts = asked.map((e) => ofElectrode(e, lightningClass, facts));
    const isLone = asked.length === 1 && (asked[0]!.part.members ?? 2) < 2;
    return [...(isLone ? ofLone(verdicts[0]!, asked[0]!, facts) : verdicts), ...bare];
  },
});

/** Two at least are asked; whether there is another is asked where electrodes were left out of the file. */
function ofLone(
  own: Verdict,
  { id, part }: ElectrodeFacts,
  facts: Pick<Facts, 'header' | 'sections'>,
): readonly Verdict[] {
  if (part.kind === 'buried wire' && part.closed !== 'no')
    return [{ is: 'cannot tell', at: [id], because: { key: 'perhaps a ring' }, settle: { key: 'follow it' } }];
  if (isWhole(facts, 'electrodes')) return [{ is: 'not met', at: [id], because: { key: 'only one' } }];
  if (own.is === 'not met') return [own];
  return [{ is: 'cannot tell', at: [id], because: { key: 'perhaps only one' }, settle: { key: 'look for others' } }];
}

const isRod = (e: ElectrodeFacts) => e.part.kind === 'rod' || e.part.kind === 'rods';

function ofElectrode(e: ElectrodeFacts, lightningClass: 1 | 2 | 3 | 4, { site }: Pick<Facts, 'site'>): Verdict {
  const at = [e.id];
  const read = e.measuredOhm;
  if (read !== null && !read.overRange && read.ohm.high < waivedOhm)
    return {
      is: 'met',
      at,
      because: { key: 'reads low' },
      measured: { key: 'resistanceOhm', value: read.ohm, limit: waivedOhm, sense: 'most' },
    };
  const level = leastLength(lightningClass, site);
  const limit = isRod(e) ? scale(level, 0.5) : level;
  const value = e.part.lengthM ?? routeLength(e.part);
  if (value === null)
    return { is: 'cannot tell', at, because: { key: 'length unknown' }, settle: { key: 'measure it' } };
  const measured = (least: number) => ({ key: 'runLengthM', value, limit: least, sense: 'least' }) as const;
  if (isAtLeast(value, limit.high * printedShare) === 'yes')
    return { is: 'met', at, because: { key: 'long enough' }, measured: measured(limit.high) };
  if (isAtLeast(value, limit.low * printedShare) === 'no')
    return { is: 'not met', at, because: { key: 'short' }, measured: measured(limit.low) };
  return { is: 'cannot tell', at, because: { key: 'soil unknown' }, settle: { key: 'measure the soil' } };
}
