import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { addBond } from '../changes/add-bond.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Boxes of a station with a case of metal; panels and plastic boxes are asked elsewhere or not. */
const station: readonly string[] = [
  'transceiver',
  'receiver',
  'transmitter',
  'amplifier',
  'tuner',
  'coax switch',
  'power supply',
  'controller',
  'rack',
  'cabinet',
];
const barKinds: readonly string[] = ['station ground bar', 'entry panel', 'main earthing bar'];

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'boxes' | 'site'>;

export const equipmentOnStationBar = rule({
  id: 'equipment-on-station-bar',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'ITU-T K.27; EN 50310',
    edition: null,
    clause: 'bonding of equipment; common practice',
    provenance: 'memory',
  },
  needs: ['header', 'sections', 'bonding', 'boxes', 'site'],
  check(facts) {
    const boxes = facts.boxes.filter((b) => station.includes(b.part.kind) && b.where !== 'outside');
    if (boxes.length === 0) return nothingThere(facts, 'equipment');
    const bars = facts.site.bars.filter((b) => barKinds.includes(b.kind) && b.present !== 'no');
    if (bars.length === 0) return nothingThere(facts, 'bars');
    const groups = new Set(bars.map((b) => facts.bonding.groupOf.get(b.id)));
    return boxes.map((b) => ofBox(b, groups, facts));
  },
});

function ofBox({ id, part }: BoxFacts, groups: ReadonlySet<string | undefined>, facts: Asked): Verdict {
  const at = [id];
  const group = facts.bonding.groupOf.get(id);
  if (group !== undefined && groups.has(group)) return { is: 'met', at, because: { key: 'on bar' } };
  const isOpen = part.bonded === 'unknown' || facts.bonding.openEnds.has(group ?? '') || !isWhole(facts, 'conductors');
  if (isOpen) return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
  const bar = facts.site.bars.find((b) => barKinds.includes(b.kind) && b.present !== 'no')?.id ?? null;
  const tie = addBond(facts.site, facts.header.region, id, bar);
  return { is: 'not met', at, because: { key: 'not on bar' }, under: `no-orphan-equipment:${id}`, ...tie };
}
