import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { addRod } from '../changes/add-rod.ts';
import { inEdition, movedThresholds } from '../code-sets/moved-thresholds.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { rodsPipesPlates } from './driven.ts';
import { isListedElectrode } from './listed-electrode.ts';

/** Ohm above which a lone rod, pipe or plate needs a second electrode. */
const mostOhm = 25;

export const singleRod25Ohm = rule({
  id: 'single-rod-25-ohm',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: {
    document: 'NFPA 70',
    edition: '2011 on',
    clause: '250.53(A)(2) exception (250.56 to 2008)',
    provenance: 'second-hand',
  },
  clauses: [
    { from: 0, clause: '250.56' },
    { from: 2011, clause: '250.53(A)(2) exception' },
  ],
  limits: [{ key: 'resistanceOhm', value: mostOhm, sense: 'most' }],
  needs: ['header', 'isAmerican', 'sections', 'electrodes', 'bonding', 'site'],
  check(facts) {
    const rods = rodsPipesPlates(facts.electrodes);
    if (rods.length === 0) return nothingThere(facts, 'electrodes');
    return rods.map((e) => ofRod(e, facts));
  },
});

type Asked = Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'electrodes' | 'bonding' | 'site'>;

function ofRod(e: ElectrodeFacts, facts: Asked): Verdict {
  const at = [e.id];
  const second = secondOf(e, facts);
  if (second === 'yes') return { is: 'met', at, because: { key: 'not alone' } };
  if (e.measuredOhm !== null) return ofReading(at, e.measuredOhm.ohm, e.measuredOhm.overRange);
  if (second === 'unknown' || mayHaveSecond(e, facts))
    return { is: 'cannot tell', at, because: { key: 'perhaps not alone' }, settle: { key: 'trace' } };
  if (isToBeTested(facts.header))
    return { is: 'cannot tell', at, because: { key: 'not tested' }, settle: { key: 'measure it' } };
  // The clause puts the burden of proof on the owner: a lone rod that nobody measured does not meet it.
  return {
    is: 'not met',
    at,
    because: { key: 'not measured' },
    ...underIsolated(e, facts.bonding),
    change: addRod(facts, e.id),
  };
}

/**
 * Another member of it, or another electrode of the owner's that is known to be there; the supplier's own does not count, nor
 * does a water pipe: the second one is of a kind that 250.52(A)(2) to (8) lists (from memory).
 */
function secondOf(e: ElectrodeFacts, { electrodes }: Asked): Answer {
  if (e.part.kind === 'rods' && e.part.members !== 1 && e.part.joined !== 'no') return 'yes';
  const others = electrodes.filter(
    (o) =>
      o.id !== e.id &&
      o.group !== null &&
      o.group === e.group &&
      o.part.kind !== 'water pipe' &&
      o.part.owner !== 'utility' &&
      o.part.present === 'yes',
  );
  const answers = others.map((o) => isListedElectrode(o.part));
  if (answers.includes('yes')) return 'yes';
  return answers.includes('unknown') ? 'unknown' : 'no';
}

/** Somebody has to look first: whether it is there at all, and what else there is. */
function mayHaveSecond(e: ElectrodeFacts, facts: Asked): boolean {
  const { perhapsUnbonded, perhapsJoined, openEnds } = facts.bonding;
  const isOpen = e.group !== null && (perhapsJoined.has(e.group) || openEnds.has(e.group));
  return (
    isOpen ||
    e.part.present === 'unknown' ||
    perhapsUnbonded.some((p) => p.electrode === e.id) ||
    !isWhole(facts, 'electrodes')
  );
}

/** Up to the edition of 2008 a rod was tested and a second one added if it was high; since 2011 it is added unless tested. */
function isToBeTested(header: Facts['header']): boolean {
  return inEdition(movedThresholds.singleRod, header).value === 'test, then add one';
}

function ofReading(
  at: readonly string[],
  ohm: { readonly low: number; readonly high: number },
  overRange: boolean,
): Verdict {
  if (overRange) return { is: 'not met', at, because: { key: 'over range' } };
  const measured = { key: 'resistanceOhm', value: ohm, limit: mostOhm, sense: 'most' } as const;
  const low = isAtMost(ohm, mostOhm);
  if (low === 'yes') return { is: 'met', at, because: { key: 'low' }, measured };
  if (low === 'no') return { is: 'not met', at, because: { key: 'high' }, measured };
  return { is: 'cannot tell', at, because: { key: 'wide' }, settle: { key: 'measure it' }, measured };
}

/** A rod that is not bonded at all has a worse finding of its own. */
function underIsolated(e: ElectrodeFacts, bonding: Facts['bonding']): { readonly under?: string } {
  return bonding.unbondedElectrodes?.includes(e.id) ? { under: `all-electrodes-one-system:${e.id}` } : {};
}
