import type { Site, State } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { rule, type Verdict } from '../rule.ts';

/** A gap that a strike has been seen to bridge, metres: reports of 0.1 m bridged (common practice, no source). */
const bridgedGapM = 0.1;

type Opening = State['open'][number];

export const spareAndDisconnectedLines = rule({
  id: 'spare-and-disconnected-lines',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'memory' },
  needs: ['site'],
  check({ site }) {
    const openings = site.states.flatMap((s) => s.open.map((o) => ({ state: s.id, ...o })));
    if (openings.length === 0) return [{ is: 'not applicable', because: { key: 'none' } }];
    const byLine = new Map<string, Verdict>();
    for (const o of openings) {
      const line = lineOf(o, site);
      const verdict = ofOpening(o, line, o.state);
      const before = byLine.get(line);
      if (before === undefined || rank(verdict) < rank(before)) byLine.set(line, verdict);
    }
    return [...byLine.values()];
  },
});

const rank = (v: Verdict) => ['not met', 'cannot tell', 'met'].indexOf(v.is);

function ofOpening(o: Opening, line: string, state: string): Verdict {
  const at = [line];
  const values = { state, gapLengthM: o.gapM };
  if (o.end === 'grounded') return { is: 'met', at, because: { key: 'grounded', values } };
  // no gap would clear an end that hangs loose
  if (o.end === 'loose') return { is: 'not met', at, because: { key: 'loose', values } };
  if (o.gapM !== null && isAtLeast(o.gapM, bridgedGapM) === 'no') {
    const measured = { key: 'gapLengthM', value: o.gapM, limit: bridgedGapM, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'bridged', values }, measured };
  }
  return { is: 'cannot tell', at, because: { key: 'nobody said', values: { state } }, settle: { key: 'say it' } };
}

/** The line that a plug or a `line:stop` belongs to. */
function lineOf(o: Opening, site: Site): string {
  const line = site.lines.find((l) => l.path.some((s) => s.is === 'plug' && s.id === o.at));
  return line?.id ?? o.at.split(':')[0]!;
}
