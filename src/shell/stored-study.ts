import { type Study, studyFormat } from '../study/study.ts';
import { exitCode, Stop } from './exit-code.ts';

/** A study grows with its site: a few hundred parts make some megabytes. */
export const studyFileLimit = 128 * 1024 * 1024;

/** Keys that every study has, and what each holds. */
const lists = [
  'states',
  'codes',
  'buildings',
  'parts',
  'guys',
  'paths',
  'lines',
  'reach',
  'conductors',
  'joints',
  'arresters',
  'strikes',
  'findings',
];
const records = ['tool', 'site', 'state', 'bonding', 'earth', 'verdict'];

/** Whether a file is meant as a stored study: JSON, with the keys that only a study has. A site file may be JSON too. */
export function looksStored(bytes: Uint8Array): boolean {
  const start = new TextDecoder('utf-8').decode(bytes.subarray(0, 4096)).trimStart();
  return start.startsWith('{') && /"format"\s*:/.test(start) && /"(?:tool|checksum)"\s*:/.test(start);
}

/** A study as `check --json` prints it, or as it lies beside a report. */
export function readStoredStudy(text: string, path: string): Study {
  const value = parsed(text, path);
  const { format } = value;
  if (typeof format !== 'number') throw refused(path, 'it has no format number, so it is no study.');
  if (format > studyFormat)
    throw refused(path, `it was written by a newer evenground (format ${format}, this one reads ${studyFormat}).`);
  const missing = [
    ...lists.filter((key) => !isListOfRecords(value[key])),
    ...records.filter((key) => !isRecord(value[key])),
    ...(isRecord(value.bonding) &&
    ['groups', 'weakPoints', 'perhapsUnbonded'].some((key) => !isListOfRecords((value.bonding as Keys)[key]))
      ? ['bonding']
      : []),
    ...(isRecord(value.earth) && !isListOfRecords(value.earth.electrodes) ? ['earth'] : []),
  ];
  if (missing.length > 0)
    throw refused(path, `these of its keys are missing or are not what they should be: ${missing.join(', ')}.`);
  return value as unknown as Study;
}

type Keys = Readonly<Record<string, unknown>>;

function parsed(text: string, path: string): Keys {
  try {
    const value: unknown = JSON.parse(text);
    if (isRecord(value)) return value;
  } catch {
    throw refused(path, 'its JSON is cut off or damaged.');
  }
  throw refused(path, 'it is no study.');
}

const isRecord = (value: unknown): value is Keys =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isListOfRecords = (value: unknown): boolean => Array.isArray(value) && value.every(isRecord);

function refused(path: string, why: string): Stop {
  return new Stop(
    exitCode.input,
    `${path}: this stored study cannot be read: ${why} Make it anew: evenground check FILE --json -o ${path}`,
  );
}
