import type { Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import { positionsOf } from '../../site/positions-of.ts';
import type { Antenna, Support } from '../../site/site.ts';
import { isExact } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Radius of the rolling sphere, metres: 46 m in the United States, by class I to IV elsewhere. */
const sphereM = { us: 46, 1: 20, 2: 30, 3: 45, 4: 60 } as const;
/** A terminal stands this much above what it protects, metres (10 in). */
const aboveM = 0.25;

export const antennaInProtectedZone = rule({
  id: 'antenna-in-protected-zone',
  family: 'code',
  severity: 'advice',
  codeSets: ['us', 'iec'],
  source: {
    document: 'MIL-HDBK-419A; NFPA 780; IEC 62305-3',
    edition: null,
    clause: 'air terminals; 4.7; 5.2',
    provenance: 'memory',
  },
  limits: [
    { key: 'radiusLengthM', value: sphereM.us, sense: 'most', of: 'rolling sphere (United States)' },
    { key: 'radiusLengthM', value: sphereM[1], sense: 'most', of: 'rolling sphere (class I)' },
    { key: 'radiusLengthM', value: sphereM[2], sense: 'most', of: 'rolling sphere (class II)' },
    { key: 'radiusLengthM', value: sphereM[3], sense: 'most', of: 'rolling sphere (class III)' },
    { key: 'radiusLengthM', value: sphereM[4], sense: 'most', of: 'rolling sphere (class IV)' },
  ],
  needs: ['header', 'sections', 'site'],
  check(facts) {
    const { header, site } = facts;
    const antennas = site.antennas.filter((a) => a.present !== 'no' && (a.where ?? 'outside') === 'outside');
    if (antennas.length === 0) return nothingThere(facts, 'antennas');
    if (!claimsOf(header).lightning) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const radiusM = radiusOf(header);
    const terminals = site.supports.filter((s) => s.kind === 'air terminal' && s.present !== 'no');
    const positions = positionsOf(site, partIndex(site).get);
    return antennas.map((a): Verdict => {
      const at = [a.id];
      const answers = terminals.map((t) => isUnder(a, t, radiusM, positions.of));
      if (answers.includes('yes')) return { is: 'met', at, because: { key: 'under' } };
      if (radiusM === null || terminals.length === 0 || answers.includes('unknown'))
        return { is: 'cannot tell', at, because: { key: 'not typed' }, settle: { key: 'survey' } };
      // the sphere may rest on two terminals, or on one and a roof, which lifts it
      const props = terminals.filter((t) => isAbove(t, a) !== 'no').length + site.buildings.length;
      if (props > 1 && terminals.some((t) => isAbove(t, a) !== 'no'))
        return { is: 'cannot tell', at, because: { key: 'several' }, settle: { key: 'survey' } };
      return { is: 'not met', at, because: { key: 'outside' } };
    });
  },
});

function radiusOf(header: Facts['header']): number | null {
  const { lightningClass } = claimsOf(header);
  if (header.region !== 'iec' && header.region !== 'uk') return sphereM.us;
  return lightningClass === null ? null : sphereM[lightningClass];
}

/**
 * Under a sphere that rolls over the ground and the terminal: horizontal distance at most sqrt(H(2R - H)) - sqrt(h(2R - h)),
 * H the height of the terminal (at most R counts), h that of the antenna.
 */
function isUnder(
  antenna: Antenna,
  terminal: Support,
  radiusM: number | null,
  positionOf: ReturnType<typeof positionsOf>['of'],
): 'yes' | 'no' | 'unknown' {
  const [a, t, topM] = [positionOf(antenna.id), positionOf(terminal.id), terminal.heightM];
  const h = topOf(antenna);
  if (radiusM === null || a === null || t === null || topM === null || h === null) return 'unknown';
  if (!isExact(topM) || !isExact(h)) return 'unknown';
  if (isAbove(terminal, antenna) === 'no') return 'no';
  const reach = (heightM: number) => Math.sqrt(Math.min(heightM, radiusM) * (2 * radiusM - Math.min(heightM, radiusM)));
  return Math.hypot(a[0] - t[0], a[1] - t[1]) <= reach(topM.low) - reach(h.low) ? 'yes' : 'no';
}

const topOf = (antenna: Antenna) => antenna.heightM ?? antenna.on?.atM ?? null;

/** Whether a terminal stands high enough above an antenna at all. */
function isAbove({ heightM }: Support, antenna: Antenna): 'yes' | 'no' | 'unknown' {
  const h = topOf(antenna);
  if (heightM === null || h === null) return 'unknown';
  return h.low > heightM.low - aboveM ? 'no' : 'yes';
}
