import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';

type Asked = Pick<Facts, 'strike' | 'site' | 'sections'>;

/**
 * What a rule says where the usual strike has no figures, or hangs on metal of which a length or a tie is not known; null: it has
 * figures. Each rule that asks has these reasons among its words.
 */
export function strikeDoubt({ strike, site, sections }: Asked): readonly Verdict[] | null {
  const { refused } = strike;
  if (refused !== null) {
    if (refused.reason === 'nothing to strike') return nothingThere({ sections }, 'equipment');
    if (refused.reason === 'no soil') return [doubt('no soil', 'type soil', [])];
    if (refused.reason === 'too large') return [doubt('too large', 'ask strike', [])];
    return [doubt('no figures', 'ask strike', [...refused.parts].sort())];
  }
  const guessed = guessedParts(strike, site.lines);
  return guessed.length > 0 ? [doubt('metal guessed', 'measure it', guessed)] : null;
}

/** The same beneath the doubt of the rule on boxes: one look settles both. */
export function foldedStrikeDoubt(asked: Asked): readonly Verdict[] | null {
  const doubts = strikeDoubt(asked);
  return (
    doubts?.map((v) =>
      v.is === 'cannot tell'
        ? { ...v, under: ['boxes-held-together', ...(v.at.length > 0 ? [v.at.join('+')] : [])].join(':') }
        : v,
    ) ?? null
  );
}

type Reason = 'no soil' | 'too large' | 'no figures' | 'metal guessed';
type Settle = 'type soil' | 'ask strike' | 'measure it';

function doubt(because: Reason, settle: Settle, at: readonly string[]) {
  return { is: 'cannot tell', at, because: { key: because }, settle: { key: settle } } as const;
}

/**
 * Parts of which a length or a height had to be taken, or of which nobody knows whether they tie: wires, and lines of the
 * house. What comes in from the street, and pipes, change where the current goes, not what holds two boxes.
 */
function guessedParts({ taken }: Facts['strike'], lines: Facts['site']['lines']): readonly string[] {
  if (taken === null) return [];
  const inside = new Set(lines.filter((l) => !l.path.some((stop) => stop.is === 'street')).map((l) => l.id));
  const ties = taken.perhaps.flatMap((path) => {
    const [section, id] = path.split('.') as [string, string | undefined];
    return id !== undefined && (section === 'conductors' || inside.has(id)) ? [id] : [];
  });
  return [...new Set([...taken.lengths.flatMap((l) => l.parts), ...taken.heights, ...ties])].sort();
}
