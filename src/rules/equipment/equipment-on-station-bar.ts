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

type Asked = Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'boxes' | 'site'>;

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
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'boxes', 'site'],
  check(facts) {
    const boxes = facts.boxes.filter((b) => station.includes(b.part.kind) && b.where !== 'outside');
    if (boxes.length === 0) return nothingThere(facts, 'equipment');
    const bars = facts.site.bars.filter((b) => barKinds.includes(b.kind) && b.present !== 'no');
    if (bars.length === 0) return nothingThere(facts, 'bars');
    const groups = new Set(bars.map((b) => facts.bonding.groupOf.get(b.id)));
    const rooms = new Map<string | null, BoxFacts[]>();
    for (const b of boxes) rooms.set(b.where, [...(rooms.get(b.where) ?? []), b]);
    const common = new Map([...rooms].map(([room, beside]) => [room, commonGroup(beside, groups, facts)]));
    return boxes.map((b) => ofBox(b, groups, common.get(b.where) ?? null, facts));
  },
});

/** Where bars are not bonded to each other: the group of those that most boxes of a room hang on, the first of equals. */
function commonGroup(boxes: readonly BoxFacts[], groups: ReadonlySet<string | undefined>, { bonding }: Asked) {
  const onBars = boxes.flatMap(({ id }) => bonding.groupOf.get(id) ?? []).filter((g) => groups.has(g));
  const countOf = (group: string) => onBars.filter((g) => g === group).length;
  return [...new Set(onBars)].sort((a, b) => countOf(b) - countOf(a) || (a < b ? -1 : 1))[0] ?? null;
}

function ofBox(
  { id, part }: BoxFacts,
  groups: ReadonlySet<string | undefined>,
  common: string | null,
  facts: Asked,
): Verdict {
  const at = [id];
  const { bonding } = facts;
  const group = bonding.groupOf.get(id);
  if (group !== undefined && group === common) return { is: 'met', at, because: { key: 'on bar' } };
  const isOther = group !== undefined && groups.has(group);
  const isOpen = (g: string | null | undefined) => bonding.openEnds.has(g ?? '') || bonding.perhapsJoined.has(g ?? '');
  const mayJoin = isOther
    ? isOpen(group) || isOpen(common)
    : part.bonded === 'unknown' || bonding.openEnds.has(group ?? '');
  const isBarOpen = facts.site.bars.some((b) => barKinds.includes(b.kind) && b.present === 'unknown');
  if (mayJoin || isBarOpen || !isWhole(facts, 'conductors'))
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
  if (isOther) return { is: 'not met', at, because: { key: 'other bar' } };
  const bar = facts.site.bars.find((b) => barKinds.includes(b.kind) && b.present !== 'no')?.id ?? null;
  const tie = addBond(facts, id, bar);
  return { is: 'not met', at, because: { key: 'not on bar' }, under: `no-orphan-equipment:${id}`, ...tie };
}
