import type { LineConductor } from '../../bonding/bonding.ts';
import type { ConductorFacts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Answer, Line } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { notWhole } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { lightningSystem } from './lightning-system.ts';
import { type Asked, type Asking, alongOf, countOf } from './side-flash.ts';

/**
 * Each line beside a down conductor whose distance is typed (`near:`, or the spacing of `along:`); all lines of which none is
 * stand in one verdict. A bond of a line is seldom where the two are near, so that one alone settles nothing.
 */
export function wiringBeside(facts: Asked, { countedM, distanceM }: Asking): readonly Verdict[] {
  const system = lightningSystem(facts);
  if (system === null || system.down.length === 0) return [];
  const between = apart(facts.site);
  const gapOf = (line: Line, down: string) =>
    between(line.id, down) ?? (line.along?.part === down ? line.along.spacingM : null);
  const wiring = facts.site.lines.filter((line) => isWiring(line, facts));
  const pairs = wiring.flatMap((line) =>
    system.down.flatMap((down) => {
      const d = gapOf(line, down.id);
      if (d === null) return [];
      const others = system.down.filter((c) => c !== down).map((c) => gapOf(line, c.id));
      return [{ line, down, d, limitM: distanceM(alongOf(line, down), countOf(others, countedM, facts)) }];
    }),
  );
  const unplaced = wiring.filter((line) => !pairs.some((p) => p.line === line)).map((line) => line.id);
  const verdicts = pairs.map(({ line, down, d, limitM }) => ofPair(line, down, d, limitM, facts));
  return unplaced.length === 0 ? verdicts : [...verdicts, notPlaced(unplaced)];
}

function notPlaced(lines: readonly string[]): Verdict {
  return { is: 'cannot tell', at: lines, because: { key: 'wiring not placed' }, settle: { key: 'tape wiring' } };
}

/** Has metal, and does not lie in the soil outdoors alone. */
function isWiring(line: Line, { site }: Pick<Asked, 'site'>): boolean {
  if (line.present === 'no' || (line.kind === 'fibre' && line.metalInside !== 'yes')) return false;
  if (line.buried !== 'yes') return true;
  const { whereOf } = partIndex(site);
  return line.path.some((s) => {
    if (s.is === 'part' || s.is === 'bond') return whereOf(s.at.part) !== 'outside';
    return (s.is === 'plug' || s.is === 'bend') && s.where !== 'outside';
  });
}

function ofPair(line: Line, down: ConductorFacts, distanceM: Interval, limitM: Interval, facts: Asked): Verdict {
  const at = [line.id, down.id];
  if (distanceM.low >= limitM.high) return { is: 'met', at, because: { key: 'far' } };
  const isBonded = bondedWith(line, down, facts);
  if (isBonded === 'yes')
    return { is: 'cannot tell', at, because: { key: 'wiring bonded' }, settle: { key: 'tape wiring bond' } };
  const isNear = distanceM.high < limitM.low;
  if (isBonded === 'unknown' && isNear) return perhapsBonded(at, facts);
  if (isNear) {
    const measured = { key: 'distanceLengthM', value: distanceM, limit: limitM.low, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'near' }, measured };
  }
  return { is: 'cannot tell', at, because: { key: 'height unknown' }, settle: { key: 'tape' } };
}

/** Too near if nothing bonds it: the distance settles nothing, the sections that nobody looked at do. */
function perhapsBonded(at: readonly string[], facts: Asked): Verdict {
  const unseen = mayHoldBond.filter((section) => facts.sections[section] === 'missing');
  if (unseen.length === 0)
    return { is: 'cannot tell', at, because: { key: 'wiring perhaps bonded' }, settle: { key: 'follow wiring' } };
  const values = { fields: unseen.map((section) => `\`${section}:\``) };
  return { is: 'cannot tell', at, because: { key: 'wiring perhaps bonded' }, settle: { key: 'type sections', values } };
}

const mayHoldBond = ['conductors', 'arresters', 'bars'] as const;

/** Its shield is bonded to what the down conductor is bonded to, or a protector there covers all its wires. */
function bondedWith(line: Line, down: ConductorFacts, facts: Asked): Answer {
  const { bonding, site } = facts;
  const groups = new Set(down.ends.map((id) => bonding.groupOf.get(id ?? '')));
  const index = partIndex(site);
  const groupOf = (point: string) => bonding.groupOf.get(index.has(point) ? point : point.split('@')[0]!);
  const meets = (points: readonly string[], test: (group: string) => boolean) =>
    points.some((p) => test(groupOf(p) ?? ''));
  const own = bonding.lines.find((l) => l.id === line.id)?.conductors ?? [];
  const pointsOf = (c: LineConductor) =>
    c.which === 'core' && c.unprotected !== 0 ? [] : [...c.bondedAt, ...c.protectedBy];
  const live = own.filter((c) => c.which !== 'protective');
  if (live.some((c) => meets(pointsOf(c), (g) => groups.has(g)))) return 'yes';
  const isOpen = live.some(
    (c) => c.unprotected === null || meets(pointsOf(c), (g) => bonding.openEnds.has(g) || bonding.perhapsJoined.has(g)),
  );
  const isTyped = line.bonded !== 'unknown' && line.path.length > 0 && line.path.every((s) => s.is !== 'unknown');
  const mayBond = notWhole(facts, mayHoldBond).length > 0;
  return isOpen || !isTyped || mayBond || line.kind === 'fibre' ? 'unknown' : 'no';
}
