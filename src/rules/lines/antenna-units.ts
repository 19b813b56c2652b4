import type { ArresterFacts } from '../../facts/facts.ts';
import { feedLines } from './crossing-lines.ts';

const unitKinds: readonly string[] = ['gas tube', 'quarter-wave stub', 'dc-blocked', 'spark gap'];

/** Protectors of lead-ins: by their line, or by their kind where no line is typed. */
export function antennaUnits(arresters: readonly ArresterFacts[]): readonly ArresterFacts[] {
  return arresters.filter(({ part, lineKinds }) =>
    lineKinds.length > 0 ? lineKinds.some((kind) => feedLines.includes(kind)) : unitKinds.includes(part.kind),
  );
}
