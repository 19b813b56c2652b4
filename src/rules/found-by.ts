import type { Asked } from './asked.ts';
import { findingOf, type Heading } from './finding-of.ts';
import type { Finding } from './run-rules.ts';

export interface Headed {
  readonly asked: Asked;
  readonly heading: Heading;
}

/** What is not met or cannot be told, and lists of what is met and alike but for the place, as orderFindings() asks. */
export function foundBy(headed: readonly Headed[], own: readonly Finding[]) {
  const open = own.filter((f) => f.outcome !== 'met');
  const met = [...eachAlone(own.filter((f) => f.outcome === 'met'))];
  for (const { asked, heading } of headed) {
    const here: Finding[] = [];
    for (const v of asked.verdicts) {
      const f = findingOf(asked, v, heading);
      if (f !== null) (v.is === 'met' ? here : open).push(f);
    }
    if (heading.agreed.length > 0) met.push(...eachAlone(here));
    else if (here.length > 0) met.push(here);
  }
  return { open, met };
}

/** Each as a list of its own. */
export function eachAlone(findings: readonly Finding[]): readonly (readonly Finding[])[] {
  return findings.map((f) => [f]);
}
