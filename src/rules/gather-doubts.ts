import type { Because, Verdict } from './rule.ts';

type Doubt = Extract<Verdict, { is: 'cannot tell' }>;

/** Places that cannot be told for one and the same reason stand as one verdict, so that one look settles one line. */
export function gatherDoubts(verdicts: readonly Verdict[]): readonly Verdict[] {
  if (!verdicts.some(isGathered)) return verdicts;
  const gathered = new Map<string, Doubt>();
  const kept: Verdict[] = [];
  for (const v of verdicts) {
    if (!isGathered(v)) {
      kept.push(v);
      continue;
    }
    const key = `${said(v.because)}\n${said(v.settle)}\n${v.under ?? ''}`;
    const before = gathered.get(key);
    gathered.set(key, before === undefined ? v : { ...before, at: [...before.at, ...v.at] });
  }
  return [...kept, ...[...gathered.values()].map((v) => ({ ...v, at: [...new Set(v.at)].sort() }))];
}

/** A reason and its values as one text; most have none. */
function said({ key, values }: Because): string {
  return values === undefined ? key : `${key} ${JSON.stringify(values)}`;
}

function isGathered(v: Verdict): v is Doubt {
  return v.is === 'cannot tell' && v.measured === undefined;
}
