import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** What the insulation of usual household kit stands as an impulse: overvoltage category II at 230/400 V. */
const withstandV = 2500;

export const boxesHeldTogether = rule({
  id: 'boxes-held-together',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'IEC 60664-1, rated impulse voltage of category II at 230/400 V',
    edition: null,
    clause: 'table F.1',
    provenance: 'memory',
  },
  needs: ['sections', 'site', 'strike'],
  check(facts) {
    const { site, sections } = facts;
    const canStrike = site.supports.length + site.antennas.length > 0;
    // a strike is worked out only where there is something to strike and something to hold together
    if (!canStrike || site.equipment.length + site.bars.length < 2) return nothingThere({ sections }, 'equipment');
    return ofStrike(facts.strike, facts);
  },
});

type Strike = Facts['strike'];
type Difference = Strike['differences'][number];

function ofStrike(strike: Strike, { site, sections }: Pick<Facts, 'site' | 'sections'>): readonly Verdict[] {
  if (strike.refused !== null) return ofRefused(strike.refused, sections);
  const isSignal = (line: string | null) => site.lines.find((l) => l.id === line)?.kind !== 'mains';
  const supports = new Set(site.supports.map((support) => support.id));
  // what stands on a support goes up with it: no bar holds it to the house
  const boxes = site.equipment.filter((e) => !supports.has(e.on?.part ?? '')).map((e) => e.id);
  const touched = new Set([...boxes, ...site.bars.map((bar) => bar.id)]);
  const asked = strike.differences.filter(
    ({ pair: { a, b, why, by } }) =>
      touched.has(a) && touched.has(b) && (why === 'reach' || (why === 'line' && isSignal(by))),
  );
  if (asked.length === 0) return nothingThere({ sections }, 'equipment');
  const guessed = guessedParts(strike, site.lines);
  if (guessed.length > 0) return [{ ...doubt('metal guessed', 'measure it'), at: guessed }];
  return folded(
    [...asked].sort((x, y) => volts(y) - volts(x)),
    new Set(boxes),
  );
}

function ofRefused(refused: NonNullable<Strike['refused']>, sections: Facts['sections']): readonly Verdict[] {
  if (refused.reason === 'nothing to strike') return nothingThere({ sections }, 'equipment');
  if (refused.reason === 'no soil') return [doubt('no soil', 'type soil')];
  if (refused.reason === 'too large') return [doubt('too large', 'ask strike')];
  return [{ ...doubt('no figures', 'ask strike'), at: [...refused.parts].sort() }];
}

type Reason = 'no soil' | 'too large' | 'no figures' | 'metal guessed';
type Settle = 'type soil' | 'ask strike' | 'measure it';

function doubt(because: Reason, settle: Settle) {
  return {
    is: 'cannot tell',
    at: [] as readonly string[],
    because: { key: because },
    settle: { key: settle },
  } as const;
}

/**
 * Parts of which a length or a height had to be taken, or of which nobody knows whether they tie: wires, and lines of the
 * house. What comes in from the street, and pipes, change where the current goes, not what holds two boxes.
 */
function guessedParts({ taken }: Strike, lines: Facts['site']['lines']): readonly string[] {
  if (taken === null) return [];
  const inside = new Set(lines.filter((l) => !l.path.some((stop) => stop.is === 'street')).map((l) => l.id));
  const ties = taken.perhaps.flatMap((path) => {
    const [section, id] = path.split('.') as [string, string | undefined];
    return id !== undefined && (section === 'conductors' || inside.has(id)) ? [id] : [];
  });
  return [...new Set([...taken.lengths.flatMap((l) => l.parts), ...taken.heights, ...ties])].sort();
}

function volts({ peak }: Difference): number {
  return Math.abs(peak.value);
}

/** A box that is over against several others is one finding: the worst leads, the others of it stand beneath. A bar is no box. */
function folded(worstFirst: readonly Difference[], boxes: ReadonlySet<string>): readonly Verdict[] {
  const leadingOf = new Map<string, string>();
  return worstFirst.map((difference): Verdict => {
    const at = [difference.pair.a, difference.pair.b];
    const peakV = volts(difference);
    const measured = { key: 'peakV', value: peakV, limit: withstandV, sense: 'most' } as const;
    if (peakV <= withstandV) return { is: 'met', at, because: { key: 'held' }, measured };
    const under = at.map((id) => leadingOf.get(id)).find((id) => id !== undefined);
    const leading = under ?? `boxes-held-together:${at.join('+')}`;
    for (const id of at) if (boxes.has(id) && !leadingOf.has(id)) leadingOf.set(id, leading);
    const parent = under === undefined ? {} : { under };
    if (!Number.isFinite(difference.wayM))
      return { is: 'not met', at, because: { key: 'no metal', values: { peakV } }, measured, ...parent };
    return {
      is: 'not met',
      at,
      because: { key: 'apart', values: { peakV, wayM: difference.wayM } },
      measured,
      ...parent,
    };
  });
}
