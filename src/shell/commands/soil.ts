import type { Study } from '../../study/study.ts';
import { type ExitCode, exitCode } from '../exit-code.ts';
import { loadSite } from '../load-site.ts';
import { print } from '../print.ts';
import { saySoil } from '../say-soil.ts';
import { studyOfSite } from '../study-of-file.ts';
import { terminalOf } from '../terminal.ts';

export interface SoilOptions {
  readonly state?: string;
  readonly json?: boolean;
}

/** The soil, what each electrode has in it now and in each season, and what would lower it. */
export function soil(file: string, options: SoilOptions): ExitCode {
  const { site, checksum } = loadSite(file, options.state ?? null);
  const state = options.state === undefined ? {} : { state: options.state };
  const study = studyOfSite(site, checksum, { ...state, detail: true });
  const page = () => saySoil(study, site, file, terminalOf(process.stdout, process.env.NO_COLOR));
  print(options.json ? json(study) : page(), undefined);
  return exitCode.fine;
}

/** Infinity, where nothing bounds a figure, is null in JSON. */
function json({ site, state, earth }: Study): string {
  return `${JSON.stringify({ site: site.name, state: state.id, earth }, null, 2)}\n`;
}
