import type { Line } from '../../site/site.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';
import { isEnclosed } from '../conductor-runs/enclosure.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { isSending, outdoorLeads } from './outdoor-leads.ts';

/** Least distance of an indoor lead-in to power wiring, metres (2 in for receivers, 4 in for senders). */
const leastM = { receiving: 0.05, sending: 0.1 } as const;

export const indoorLeadInSeparation = rule({
  id: 'indoor-lead-in-separation',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.18(B), 810.70', provenance: 'second-hand' },
  limits: [
    { key: 'distanceLengthM', value: leastM.receiving, sense: 'least', of: 'receiving' },
    { key: 'distanceLengthM', value: leastM.sending, sense: 'least', of: 'sending' },
  ],
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const mains = site.lines.filter((l) => l.kind === 'mains' && l.present !== 'no' && l.overhead !== 'yes');
    const named = mainsByName(mains);
    const beside = outdoorLeads(site).flatMap((line) => powerBeside(line, named).map((power) => ({ line, ...power })));
    if (beside.length === 0) return nothingThere({ sections }, 'lines');
    return beside.map(({ line, power, distanceM }) => ofPair(line, power, distanceM, isSending(line, site)));
  },
});

interface Power {
  readonly power: Line;
  readonly distanceM: Interval | null;
}

/** Mains lines by their own names, and by those of the lines that they say they run beside or near. */
function mainsByName(mains: readonly Line[]): ReadonlyMap<string, ReadonlySet<Line>> {
  const named = new Map<string, Set<Line>>();
  for (const power of mains) {
    for (const name of [power.id, ...besides(power)]) named.set(name, (named.get(name) ?? new Set()).add(power));
  }
  return named;
}

function besides({ along, near }: Line): readonly string[] {
  return [along?.part ?? null, ...near.map((n) => n.part)].filter((part) => part !== null);
}

/** Mains lines that either says it runs beside or near. */
function powerBeside(line: Line, named: ReadonlyMap<string, ReadonlySet<Line>>): readonly Power[] {
  const mains = new Set([line.id, ...besides(line)].flatMap((name) => [...(named.get(name) ?? [])]));
  return [...mains].flatMap((power) => {
    const typed = [besideOf(line, power), besideOf(power, line)].filter((t) => t !== null);
    return typed.length === 0 ? [] : [{ power, distanceM: typed[0]!.distanceM }];
  });
}

function besideOf(a: Line, b: Line): { readonly distanceM: Interval | null } | null {
  if (a.along?.part === b.id) return { distanceM: a.along.spacingM };
  const near = a.near.find((n) => n.part === b.id);
  return near === undefined ? null : { distanceM: near.distanceM };
}

/** A raceway or a barrier releases it. */
function ofPair(line: Line, power: Line, distanceM: Interval | null, sends: boolean): Verdict {
  const at = [line.id, power.id];
  if (isEnclosed(line.enclosure) || isEnclosed(power.enclosure)) return { is: 'met', at, because: { key: 'enclosed' } };
  const limit = sends ? leastM.sending : leastM.receiving;
  const enough = distanceM === null ? 'unknown' : isAtLeast(distanceM, limit);
  if (enough === 'unknown') return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'tape' } };
  const measured = { key: 'distanceLengthM', value: distanceM!, limit, sense: 'least' } as const;
  if (enough === 'yes') return { is: 'met', at, because: { key: 'clear' }, measured };
  return { is: 'not met', at, because: { key: 'near' }, measured };
}
