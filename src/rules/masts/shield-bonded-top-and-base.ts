import { type Interval, isAtMost, subtract } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { indoorMasts } from './indoor-masts.ts';
import { type LineOnMast, linesOnMasts } from './shield-points.ts';

/** How far below the antenna, and above the foot, a bond still counts as there, metres (10 ft). Ours. */
const withinM = 3.048;

export const shieldBondedTopAndBase = rule({
  id: 'shield-bonded-top-and-base',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'waveguide grounding', provenance: 'read' },
  limits: [{ key: 'withinLengthM', value: withinM, sense: 'most' }],
  needs: ['sections', 'masts', 'site'],
  check({ sections, masts, site }) {
    const indoors = indoorMasts(site);
    const lines = linesOnMasts(site, masts).filter(({ mast }) => !indoors.has(mast.id));
    return lines.length === 0 ? nothingThere({ sections }, 'lines') : lines.map(ofLine);
  },
});

function ofLine(on: LineOnMast): Verdict {
  const at = [on.line.id];
  const { bondsM, isOpen } = on;
  if (bondsM.length === 0 && !isOpen) return { is: 'not met', at, because: { key: 'neither' } };
  const [top, base] = [atTop(on), anyOf(bondsM)];
  const isOneForBoth = top === 'yes' && base === 'yes' && !areTwo(on);
  if (isOneForBoth && !isOpen && !bondsM.includes(null)) return { is: 'not met', at, because: { key: 'one for both' } };
  if (top === 'yes' && base === 'yes' && !isOneForBoth) return { is: 'met', at, because: { key: 'both' } };
  if (!isOpen && top === 'no') return { is: 'not met', at, because: { key: base === 'no' ? 'neither' : 'no top' } };
  if (!isOpen && base === 'no') return { is: 'not met', at, because: { key: 'no base' } };
  return { is: 'cannot tell', at, because: { key: 'heights unknown' }, settle: { key: 'look' } };
}

/** On a mast that is higher than that, one bond half way up is not at both ends. */
function areTwo({ antennaM, bondsM }: LineOnMast): boolean {
  if (antennaM !== null && antennaM.high <= withinM) return true;
  const isNear = (d: Interval) => isAtMost(d, withinM) === 'yes';
  const known = bondsM.filter((b) => b !== null);
  const [tops, bases] = [known.filter((b) => antennaM !== null && isNear(subtract(antennaM, b))), known.filter(isNear)];
  return tops.some((t) => bases.some((b) => b !== t));
}

function atTop({ antennaM, bondsM }: LineOnMast) {
  return anyOf(bondsM.map((b) => (antennaM === null || b === null ? null : subtract(antennaM, b))));
}

function anyOf(all: readonly (Interval | null)[]): 'yes' | 'no' | 'unknown' {
  const answers = all.map((d) => (d === null ? 'unknown' : isAtMost(d, withinM)));
  return answers.includes('yes') ? 'yes' : answers.includes('unknown') ? 'unknown' : 'no';
}
