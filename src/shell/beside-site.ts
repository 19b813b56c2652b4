import { basename, dirname, join } from 'node:path';
import type { Beside } from '../rules/run-rules.ts';
import type { Problem } from '../site/problem.ts';
import type { Site } from '../site/site.ts';
import { readAgreed } from '../site/standard/read-agreed.ts';
import { readStandard } from '../site/standard/read-standard.ts';
import { sayProblem } from '../words/say-problem.ts';
import { exitCode, Stop } from './exit-code.ts';
import { readBytes } from './files.ts';
import { knownRules } from './known-rules.ts';

/** Bytes of a side file: a page or two of text. */
const sideFileLimit = 256 * 1024;

/** The small files that a site names, read from its own folder; every problem at once when one cannot be used. */
export function besideSite({ header }: Site, sitePath: string): Beside {
  const known = knownRules();
  const { standard, agreedIn = null } = header;
  return {
    standard:
      standard === null
        ? null
        : read(standard, 'standard', sitePath, (text, file) => {
            const { standard: value, problems } = readStandard(text, file, known);
            return { value, problems };
          }),
    agreed:
      agreedIn === null
        ? []
        : read(agreedIn, 'agreed_in', sitePath, (text, file) => {
            const { agreements, problems } = readAgreed(text, file);
            return { value: agreements?.agreed ?? null, problems };
          }),
  };
}

type Reader<T> = (text: string, file: string) => { readonly value: T | null; readonly problems: readonly Problem[] };

function read<T>(name: string, field: string, sitePath: string, reader: Reader<T>): T {
  if (basename(name) !== name) {
    throw new Stop(
      exitCode.input,
      `${sitePath}: site.${field}: \`${name}\` leads out of the folder. Name a file that lies beside the site file.`,
    );
  }
  const path = join(dirname(sitePath), name);
  const bytes = readBytes(path, sideFileLimit);
  if (bytes.length > sideFileLimit)
    throw new Stop(exitCode.input, `${path}: it is larger than 256 KiB. Is it the right file?`);
  const { value, problems } = reader(new TextDecoder('utf-8').decode(bytes), name);
  if (value !== null) return value;
  const said = problems.map((p) => sayProblem(p, path)).join('\n');
  const count = problems.length === 1 ? '1 problem' : `${problems.length} problems`;
  throw new Stop(exitCode.input, `${said}\n${path}: ${count}; nothing was worked out.`);
}
