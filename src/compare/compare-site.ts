import type { Study } from '../study/study.ts';
import { fieldChanges } from './changed-parts.ts';
import type { FieldChange } from './comparison.ts';
import type { Names } from './matching/names.ts';

/** What is said of the site itself and differs: supply, service, codes, soil. What only names or dates the file is left out. */
export function compareSite(before: Study, after: Study, names: Names): readonly FieldChange[] {
  return fieldChanges(saidOf(before), saidOf(after), names);
}

function saidOf({ site, codes, codeSets, earth }: Study): Readonly<Record<string, string>> {
  const { region, service, supply, claims, temporary } = site;
  const soil = earth.soil;
  const said: Readonly<Record<string, string | null>> = {
    region,
    service,
    supply,
    claims,
    temporary,
    codes:
      codes.length === 0
        ? null
        : codes
            .map((c) =>
              Object.values(c)
                .filter((x) => x !== null)
                .join(', '),
            )
            .join('; '),
    'code sets': codeSets === undefined ? null : codeSets.join(', '),
    'soil.type': soil?.type ?? null,
    'soil.known': soil?.known ?? null,
    'soil.layers': soil === null || soil.layers.length === 0 ? null : JSON.stringify(soil.layers),
  };
  return Object.fromEntries(Object.entries(said).filter((entry): entry is [string, string] => entry[1] !== null));
}
