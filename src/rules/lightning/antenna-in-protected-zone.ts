import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { protectedZone, sphereM, topOf } from './protected-zone.ts';

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
    const zoneOf = protectedZone(facts);
    return antennas.map((a): Verdict => {
      const at = [a.id];
      const zone = zoneOf({ id: a.id, topM: topOf(a) });
      if (zone === 'under') return { is: 'met', at, because: { key: 'under' } };
      if (zone === 'outside') return { is: 'not met', at, because: { key: 'outside' } };
      return { is: 'cannot tell', at, because: { key: zone }, settle: { key: 'survey' } };
    });
  },
});
