import type { Facts } from '../../facts/facts.ts';
import type { Metal } from '../../materials/metals.ts';
import type { Answer, Conductor, Electrode, Guy, Support } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { wiresOn } from '../wires-on.ts';

export const galvanisedAndCopperInSoil = rule({
  id: 'galvanised-and-copper-in-soil',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'TIA-222', edition: 'F, G', clause: 'protective grounding', provenance: 'second-hand' },
  needs: ['header', 'sections', 'site'],
  check(facts) {
    const { supports } = facts.site;
    const guys = supports.flatMap((s) => (s.present === 'no' ? [] : s.guys)).filter((g) => g.metal !== 'none');
    const bases = supports.filter((s) => s.present !== 'no' && s.metal !== 'none' && standsInSoil(s));
    if (guys.length === 0 && bases.length === 0) return nothingThere(facts, 'supports');
    const asked = [...guys.map((g) => ({ ...g, isGuy: true })), ...bases.map((b) => ({ ...b, isGuy: false }))];
    return asked.map((p) => ofSteel(p, facts));
  },
});

/** The owner's words on what it stands in: set straight in the soil, not in a block. */
function standsInSoil({ base = null }: Support): boolean {
  return base !== null && /\b(?:soil|earth|buried|direct)/i.test(base) && !/concrete|block|footing/i.test(base);
}

type Asked = Pick<Facts, 'header' | 'sections' | 'site'>;
type Steel = Pick<Support, 'id'> & { readonly metal: Guy['metal']; readonly isGuy: boolean };

/** The shaft or the foot in the soil is what is eaten, so only what conductors join to it counts: a guy is no bond. */
function ofSteel(steel: Steel, facts: Asked): Verdict {
  const at = [steel.id];
  const metal = steel.metal === 'none' ? null : steel.metal;
  const isZinc = isEaten(metal);
  const sure = tiedTo(steel, facts, ['yes']);
  if (isZinc && sure.electrodes.some(isCopper)) return { is: 'not met', at, because: { key: 'eaten' } };
  if (isZinc && sure.wires.some((c) => isCopperWire(c) && isBareInSoil(c)))
    return { is: 'not met', at, because: { key: 'eaten by wire' } };
  const { electrodes, wires, isTraced } = tiedTo(steel, facts, ['yes', 'unknown']);
  if (!isTraced) return { is: 'cannot tell', at, because: { key: 'end unknown' }, settle: { key: 'trace' } };
  if (isZinc && electrodes.some(isCopper))
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'trace' } };
  const metals = electrodes.map(metalOf);
  if (metals.length > 0 && (metal === null || metals.includes(null)))
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look' } };
  if (isZinc && wires.some((c) => mayBeCopperWire(c) && mayBeBareInSoil(c)))
    return { is: 'cannot tell', at, because: { key: 'wire unknown' }, settle: { key: 'look at wire' } };
  return { is: 'met', at, because: { key: metals.length === 0 ? 'no electrode' : 'alike' } };
}

const isEaten = (metal: Metal | null) => metal?.name === 'galvanised steel' || metal?.name === 'steel';
const isBareCopper = (metal: Metal | null | undefined) =>
  metal != null && /copper/.test(metal.name) && !/tinned/.test(metal.name);

const metalOf = (e: Electrode) => e.metal ?? e.wire?.metal ?? null;
const isCopper = (e: Electrode) => isBareCopper(metalOf(e));
const isCopperWire = ({ wire }: Conductor) => isBareCopper(wire?.metal);
const mayBeCopperWire = ({ wire }: Conductor) => wire === null || wire.metal === null || isBareCopper(wire.metal);
const isBareInSoil = (c: Conductor) => c.wire?.insulated === 'no' && c.buriedM !== null && c.buriedM !== 'no';
const mayBeBareInSoil = (c: Conductor) => c.wire?.insulated !== 'yes' && c.buriedM !== 'no';

interface Tied {
  readonly electrodes: readonly Electrode[];
  /** What lands on it and on all that is walked over. */
  readonly wires: readonly Conductor[];
  /** false: a wire there ends nobody knows where, or not all wires were typed. */
  readonly isTraced: boolean;
}

/**
 * By wires, over bars; from a guy also over electrodes of the metal of its anchor, which are eaten with it. From these a
 * tinned wire is not followed: it is what is asked for there, and somewhere in the one system that codes ask for there is a
 * copper rod. Nor is any beyond an electrode of another metal, a panel or a mast.
 */
function tiedTo({ id, isGuy }: Steel, facts: Asked, present: readonly Answer[]): Tied {
  const { conductors, bars, electrodes } = facts.site;
  const there = electrodes.filter((e) => present.includes(e.present));
  const zinc = new Set(there.filter((e) => isGuy && isEaten(metalOf(e))).map((e) => e.id));
  const over = new Set([...zinc, ...bars.filter((b) => present.includes(b.present)).map((b) => b.id)]);
  const landing = wiresOn(conductors);
  const [through, reached, wires] = [new Set([id]), new Set<string | null>(), new Set<Conductor>()];
  // a set that grows while it is walked: each part is looked at once
  for (const from of through) {
    const here = (landing.get(from) ?? []).filter((c) => present.includes(c.present));
    for (const wire of here.filter((c) => !zinc.has(from) || leadsOn(c, present))) {
      wires.add(wire);
      for (const part of pointsOf(wire)) {
        reached.add(part);
        if (part !== null && over.has(part)) through.add(part);
      }
    }
  }
  const isTraced = !reached.has(null) && isWhole(facts, 'conductors');
  return { electrodes: there.filter((e) => reached.has(e.id)), wires: [...wires], isTraced };
}

/** One whose metal nobody knows may be tinned, or may not. */
function leadsOn({ wire }: Conductor, present: readonly Answer[]): boolean {
  return wire?.metal == null ? present.includes('unknown') : !/tinned/.test(wire.metal.name);
}

const pointsOf = (c: Conductor) => [c.from, c.to, ...c.passes.map((p) => p.at)].map((p) => p.part);
