import type { Facts } from '../../facts/facts.ts';
import { onceFor } from '../../units/once-for.ts';
import { nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { missingFields } from './missing-fields.ts';

type Asked = Pick<Facts, 'strike' | 'site' | 'sections' | 'electrodes'>;

/**
 * What a rule says where the usual strike has no figures, or hangs on metal of which a length or a tie is not known; null: it has
 * figures. Each rule that asks has these reasons among its words.
 */
export function strikeDoubt({ strike, site, sections, electrodes }: Asked): readonly Verdict[] | null {
  const { refused } = strike;
  if (refused !== null) {
    if (refused.reason === 'nothing to strike') return nothingThere({ sections }, 'equipment');
    if (refused.reason === 'no soil')
      return [refused.parts.length === 0 ? doubt('no soil', 'type soil', []) : unknownOhm(refused.parts, electrodes)];
    if (refused.reason === 'no electrode') return [doubt('no electrode', 'type electrode', [])];
    if (refused.reason === 'too large') return [doubt('too large', 'ask strike', [])];
    return [doubt('no figures', 'ask strike', [...refused.parts].sort())];
  }
  const guessed = guessedParts(strike, site.lines);
  // of a line with a stop in between, the length of the whole says nothing of its pieces
  const pieced = guessed.filter((id) => inPieces(site.lines).has(id) && isLengthTaken(strike, id));
  const others = guessed.filter((id) => !pieced.includes(id));
  const doubts = [
    ...(others.length > 0 ? [doubt('metal guessed', 'measure it', others)] : []),
    ...(pieced.length > 0 ? [doubt('pieces guessed', 'measure pieces', pieced)] : []),
  ];
  return doubts.length > 0 ? doubts : null;
}

/** The soil is known, and nothing of what any electrode has to it. */
function unknownOhm(parts: readonly string[], electrodes: Facts['electrodes']): Doubt {
  const at = [...parts].sort();
  const fields = missingFields(electrodes, at);
  if (fields.length === 0) return doubt('electrode unknown', 'measure alone', at);
  return {
    is: 'cannot tell',
    at,
    because: { key: 'electrode unknown' },
    settle: { key: 'type fields', values: { fields } },
  };
}

const isLengthTaken = ({ taken }: Facts['strike'], id: string): boolean =>
  taken?.lengths.some((l) => l.parts.includes(id)) ?? false;

/** Lines of more than one piece; bends end none. */
const inPieces = onceFor(
  (lines: Facts['site']['lines']): ReadonlySet<string> =>
    new Set(lines.filter((l) => l.path.filter((stop) => stop.is !== 'bend').length > 2).map((l) => l.id)),
);

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

type Reason =
  | 'no soil'
  | 'no electrode'
  | 'electrode unknown'
  | 'too large'
  | 'no figures'
  | 'metal guessed'
  | 'pieces guessed';
type Settle = 'type soil' | 'type electrode' | 'measure alone' | 'ask strike' | 'measure it' | 'measure pieces';
type Doubt = Extract<Verdict, { is: 'cannot tell' }>;

function doubt(because: Reason, settle: Settle, at: readonly string[]): Doubt {
  return { is: 'cannot tell', at, because: { key: because }, settle: { key: settle } };
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
