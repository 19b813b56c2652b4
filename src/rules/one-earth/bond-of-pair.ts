import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import { thickerWire } from '../changes/thicker-wire.ts';
import { bestCopper, copperSettles, isThickCopper } from '../copper-section.ts';
import { reachedThick } from '../reached-thick.ts';
import type { Verdict } from '../rule.ts';
import { isShelter } from '../shelter-kinds.ts';
import { wiresOn } from '../wires-on.ts';
import type { Pair } from './pairs-in-reach.ts';

/** Least section of what bonds two things within reach of one person, square metres (6 AWG as printed). */
export const leastBondM2 = 13.3e-6;

/**
 * Two things that bonds join: a conductor straight from one to the other has to be thick enough, or another way that is. A way
 * over other parts alone is taken as it is.
 */
export function ofBond(
  at: Pair,
  facts: Pick<Facts, 'bonding' | 'conductors' | 'header' | 'site'>,
): Exclude<Verdict, { is: 'not applicable' | 'not looked at' }> {
  const straight = straightFrom(at, facts);
  if (straight.length === 0) return { is: 'met', at, because: { key: 'one group' } };
  const { is, measured } = bestCopper(straight, leastBondM2);
  if (is === 'enough') return { is: 'met', at, because: { key: 'one group' }, ...(measured && { measured }) };
  const thick = reachedThick(facts, at[0], new Set([at[1]]), isThick);
  if (thick === 'yes') return { is: 'met', at, because: { key: 'one group' } };
  if (is !== 'thin') return { is: 'cannot tell', at, because: { key: is }, settle: { key: copperSettles[is] } };
  if (thick === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  return {
    is: 'not met',
    at,
    because: { key: 'thin', values: { conductors: straight.map((c) => c.id) } },
    severity: at.some((id) => isOfField(id, facts)) ? 'defect' : 'advice',
    ...(measured && { measured }),
    ...thickerWire(straight[0]!.id, leastBondM2, 'awg'),
  };
}

/** The source speaks of shelters in the field: elsewhere what a bond lacks in size is advice. */
function isOfField(id: string, { header, site }: Pick<Facts, 'header' | 'site'>): boolean {
  return header.temporary === 'yes' || isShelter(partIndex(site).get(id)?.kind ?? '');
}

function straightFrom(
  [a, b]: Pair,
  { conductors, site }: Pick<Facts, 'conductors' | 'site'>,
): readonly ConductorFacts[] {
  const wires = wiresOn(site.conductors);
  const onOther = new Set(wires.get(b) ?? []);
  const both = new Set((wires.get(a) ?? []).filter((w) => onOther.has(w)).map((w) => w.id));
  if (both.size === 0) return [];
  return conductors.filter((c) => both.has(c.id) && c.part.present !== 'no' && c.part.condition !== 'open');
}

const isThick = (c: ConductorFacts) => isThickCopper(c, leastBondM2);
