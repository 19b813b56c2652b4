import type { BoxFacts, Facts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { reachedByCord } from '../reached-by-cord.ts';
import { rule, type Verdict } from '../rule.ts';
import { hasNoCase, isOfMetal } from './cases-of-metal.ts';

/** Its case is bonded inside, by whoever brings the supply, where no owner may look: none is ever found wanting. */
const meterBox = 'meter box';
/** What a feeder comes to, with no plug whose pins could be counted. */
const panels: readonly string[] = ['service panel', 'sub-panel'];
/** Kinds on whose case a supply begins. */
const sources: readonly string[] = ['service panel', meterBox, 'generator'];

export const noOrphanEquipment = rule({
  id: 'no-orphan-equipment',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'IEEE Std 1100; ITU-T K.27',
    edition: null,
    clause: 'bonding of equipment',
    provenance: 'memory',
  },
  needs: ['header', 'sections', 'bonding', 'boxes', 'site'],
  check(facts) {
    // of the service itself service-electrode-known asks
    const { part } = facts.bonding.service;
    const boxes = facts.boxes.filter((b) => isAsked(b) && b.id !== part);
    if (boxes.length === 0) return nothingThere(facts, 'equipment');
    const fed = fedWithEarth(facts);
    return boxes.map((b) => ofBox(b, fed(b), facts));
  },
});

/** What is the supplier's is the supplier's affair. */
function isAsked({ part: { kind, owner, present } }: BoxFacts): boolean {
  if (present === 'no' || owner?.toLowerCase() === 'utility') return false;
  return !hasNoCase(kind);
}

function ofBox(b: BoxFacts, byCord: Answer, facts: Pick<Facts, 'header' | 'sections' | 'bonding'>): Verdict {
  const at = [b.id];
  const { earthBy, serviceBy, service } = facts.bonding;
  if (earthBy.bonds.has(b.id)) return { is: 'met', at, because: { key: 'bonded' } };
  if (b.part.kind === 'generator' && service.is === 'none') return { is: 'met', at, because: { key: 'own source' } };
  if (serviceBy.bondsAndCords.has(b.id) || byCord === 'yes') return { is: 'met', at, because: { key: 'by its cord' } };
  const { kind, bonded } = b.part;
  if (kind === meterBox) return { is: 'cannot tell', at, because: { key: 'meter' }, settle: { key: 'ask supplier' } };
  const saysNone = bonded === 'no' && byCord === 'no' && !earthBy.perhaps.has(b.id);
  const whole = isWhole(facts, 'conductors') && isWhole(facts, 'lines');
  const open = earthBy.perhaps.has(b.id) || bonded === 'unknown' || !whole || byCord === 'unknown';
  if (open && !saysNone) {
    const key = panels.includes(kind) ? 'ask feeder' : 'look';
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key } };
  }
  if (!isOfMetal(kind))
    return { is: 'cannot tell', at, because: { key: 'case unknown' }, settle: { key: 'look at case' } };
  const verdict: Verdict = { is: 'not met', at, because: { key: 'nothing' } };
  // where no protective conductor comes to its panel that weighs more, and is put right first
  return saysNone ? verdict : { ...verdict, under: `earth-is-not-a-fault-path:${b.id}` };
}

/** Whether a cord or circuit brings a protective conductor from a panel or generator; a source brings it to others. */
function fedWithEarth(facts: Pick<Facts, 'bonding' | 'site'>): (b: BoxFacts) => Answer {
  const ofKinds = (list: readonly string[]) =>
    facts.site.equipment.filter((e) => list.includes(e.kind) && e.present !== 'no').map((e) => e.id);
  const reach = (roots: readonly string[]) => [false, true].map((perhaps) => reachedByCord(facts, roots, perhaps));
  // A sub-panel is not tied by the cords that it feeds.
  const [panelSure, panelPerhaps] = reach(ofKinds(sources));
  const outletOf = byOutlet(facts.site);
  const [boxSure, boxPerhaps] = reach(ofKinds([...sources, 'sub-panel']));
  return ({ id, part }) => {
    if (sources.includes(part.kind)) return 'no';
    const outlet = outletOf(id);
    if (outlet === 'yes') return 'yes';
    const isPanel = part.kind === 'sub-panel';
    if ((isPanel ? panelSure : boxSure)!.has(id)) return 'yes';
    if (outlet === 'unknown') return 'unknown';
    return (isPanel ? panelPerhaps : boxPerhaps)!.has(id) ? 'unknown' : 'no';
  };
}

/** By a cord to where no panel was typed; and where nobody spoke of the mains at all, perhaps by one. */
function byOutlet({ lines, header }: Facts['site']): (id: string) => Answer {
  const mains = lines.filter((l) => l.kind === 'mains' && l.present !== 'no');
  if (mains.length === 0) {
    const answer = header.without.includes('mains') ? 'no' : 'unknown';
    return () => answer;
  }
  const cords = mains
    .filter(({ path }) => path.some((s) => s.is === 'street' || s.is === 'unknown'))
    .map((l) => ({ ...l, ids: l.path.flatMap((s) => (s.is === 'part' ? [s.at.part] : [])) }));
  return (id) => {
    const answers = cords.filter((c) => c.ids.includes(id)).map((c) => c.protectiveConductor);
    if (answers.includes('yes')) return 'yes';
    return answers.includes('unknown') ? 'unknown' : 'no';
  };
}
