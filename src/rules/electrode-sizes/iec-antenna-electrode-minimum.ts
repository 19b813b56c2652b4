import type { Group } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import type { Answer, Site } from '../../site/site.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { facadeExempt } from '../facade-exempt.ts';
import { isWhole } from '../looked-at.ts';
import { indoorMasts } from '../masts/indoor-masts.ts';
import { rule, type Verdict } from '../rule.ts';
import { best } from './answers.ts';
import { enoughForAntenna, rodM, shortRodM } from './enough-for-antenna.ts';
import { runLimitM } from './two-runs.ts';

export const iecAntennaElectrodeMinimum = rule({
  id: 'iec-antenna-electrode-minimum',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: {
    document: 'IEC 60728-11',
    edition: '2010 to 2016',
    clause: 'earth electrode of an antenna',
    provenance: 'second-hand',
  },
  limits: [
    { key: 'rodLengthM', value: rodM, sense: 'least', of: 'one rod' },
    { key: 'rodLengthM', value: shortRodM, sense: 'least', of: 'each of two rods' },
    { key: 'runLengthM', value: runLimitM, sense: 'least', of: 'each of two runs' },
  ],
  needs: ['header', 'sections', 'bonding', 'electrodes', 'site', 'conductors'],
  check(facts) {
    const asked = whatIsAsked(facts.site);
    const isAsked = (g: Group) => best(g.parts.map((id) => asked.get(id) ?? 'no'));
    const earthed = facts.bonding.groups.filter((g) => g.electrodes.length > 0 && isAsked(g) !== 'no');
    if (earthed.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    return earthed.map((g) => onlyIf(isAsked(g), ofGroup(g, facts)));
  },
});

/** Antennas and supports outdoors; on the face of a building, close to the wall and well below the roof, none is asked. */
function whatIsAsked(site: Site): ReadonlyMap<string, Answer> {
  const [zone, indoors] = [facadeExempt(site), indoorMasts(site)];
  const antennas = site.antennas.filter((a) => a.where === null || a.where === 'outside');
  const supports = site.supports.filter((s) => !indoors.has(s.id));
  const isOut = (support: string): Answer => {
    const isExempt = zone.get(support) ?? 'no';
    return isExempt === 'unknown' ? 'unknown' : isExempt === 'yes' ? 'no' : 'yes';
  };
  return new Map([
    ...supports.map((s) => [s.id, isOut(s.id)] as const),
    ...antennas.map((a) => [a.id, isOut(a.on?.part ?? '')] as const),
  ]);
}

/** Where nobody knows whether it is asked, what is too little is not known to be wrong. */
function onlyIf(asked: Answer, v: Verdict): Verdict {
  if (asked === 'yes' || v.is !== 'not met') return v;
  return { is: 'cannot tell', at: v.at, because: { key: 'on facade' }, settle: { key: 'measure facade' } };
}

function ofGroup(
  g: Group,
  facts: Pick<Facts, 'header' | 'sections' | 'electrodes' | 'bonding' | 'site' | 'conductors'>,
): Verdict {
  const all = facts.electrodes.filter((e) => e.group === g.id);
  const at = all.map((e) => e.id).sort();
  // What is earth enough for the lightning protection of a building is for its antenna.
  const isProtected = all.some((e) => e.part.present === 'yes' && purposesOf(e.part, facts).has('lightning'));
  if (isProtected) return { is: 'met', at, because: { key: 'enough' } };
  const { answer, ...figure } = enoughForAntenna(all);
  if (answer === 'yes') return { is: 'met', at, because: { key: 'enough' }, ...figure };
  const mayBeMore =
    !isWhole(facts, 'electrodes') || facts.bonding.perhapsJoined.has(g.id) || facts.bonding.openEnds.has(g.id);
  if (answer === 'unknown' || mayBeMore) {
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'measure' } };
  }
  return { is: 'not met', at, because: { key: 'too little' } };
}
