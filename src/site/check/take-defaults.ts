import { takesTopAtGrade } from '../build/electrode.ts';
import { assume } from '../reading/report.ts';
import type { TypedSite } from '../reading/typed-site.ts';
import type { Checked } from './checked.ts';

const laidInSoil: readonly string[] = ['buried wire', 'radial'];
const grouped: readonly string[] = ['rods', 'radial'];

/** Notes every default that had to be taken because the file does not say. */
export function takeDefaults({ typed, site, report }: Checked): void {
  if (typed.header.units === null) assume(report, 'site.units', 'default-units', site.header.units);
  if (someHowKnownLeftOut(typed)) assume(report, 'known', 'default-known', 'told');
  for (const { id, kind, values, typed: texts } of typed.parts.electrodes) {
    if (takesTopAtGrade({ kind, typed: texts })) assume(report, `electrodes.${id}.top`, 'default-top', '0');
    const isBare = laidInSoil.includes(kind) && (values.wire === null || values.wire.insulated === 'unknown');
    if (isBare) assume(report, `electrodes.${id}.wire`, 'default-bare', 'bare');
  }
  for (const [section, parts] of Object.entries(typed.parts)) {
    for (const { id, kind, values, typed: texts } of parts) {
      const isLeftOpen = 'count' in texts && values.count === null && !grouped.includes(kind);
      if (isLeftOpen) assume(report, `${section}.${id}.count`, 'default-count', '1');
    }
  }
}

function someHowKnownLeftOut({ parts }: TypedSite): boolean {
  return Object.values(parts).some((members) => members.some(({ values }) => values.known === null));
}
