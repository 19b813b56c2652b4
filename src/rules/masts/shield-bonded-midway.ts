import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { type LineOnMast, linesOnMasts } from './shield-points.ts';

/** Taller than this a bond between top and base is asked, metres (200 ft as printed). */
const tallM = 60.96;

export const shieldBondedMidway = rule({
  id: 'shield-bonded-midway',
  family: 'practice',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'waveguide grounding', provenance: 'read' },
  limits: [{ key: 'heightLengthM', value: tallM, sense: 'most' }],
  needs: ['sections', 'masts', 'site'],
  check({ sections, masts, site }) {
    const lines = linesOnMasts(site, masts);
    if (lines.length === 0) return nothingThere({ sections }, 'lines');
    // where nobody typed how high the antenna is, it stands no higher than its mast
    const tall = lines.filter(({ antennaM, mast }) => ((antennaM ?? mast.part.heightM)?.high ?? Infinity) > tallM);
    return tall.length === 0 ? [{ is: 'not applicable', because: { key: 'not tall' } }] : tall.map(ofLine);
  },
});

/** Between the lowest and the highest quarter. Ours. */
function ofLine({ line, antennaM, bondsM, isOpen }: LineOnMast): Verdict {
  const at = [line.id];
  if (antennaM === null) return { is: 'cannot tell', at, because: { key: 'heights unknown' }, settle: { key: 'look' } };
  const height = antennaM;
  const isMidway = bondsM.some((b) => b !== null && b.low > height.high / 4 && b.high < (height.low * 3) / 4);
  if (isMidway) return { is: 'met', at, because: { key: 'midway' } };
  const isUnknown = isOpen || height.low <= tallM || bondsM.some((b) => b === null);
  if (isUnknown) return { is: 'cannot tell', at, because: { key: 'heights unknown' }, settle: { key: 'look' } };
  return { is: 'not met', at, because: { key: 'none midway' } };
}
