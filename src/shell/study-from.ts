import { basename } from 'node:path';
import type { Study } from '../study/study.ts';
import { exitCode, Stop } from './exit-code.ts';
import { readBytes } from './files.ts';
import { siteOfBytes } from './load-site.ts';
import { looksStored, readStoredStudy, studyFileLimit } from './stored-study.ts';
import { type StudyAsk, studyOfLoaded } from './study-of-file.ts';

export interface StudyFrom {
  readonly study: Study;
  readonly isStored: boolean;
}

/** The study of a site file, or a stored one that stands in for it. */
export function studyFrom(path: string, ask: StudyAsk): StudyFrom {
  const bytes = readBytes(path, studyFileLimit);
  if (!looksStored(bytes)) {
    return { study: studyOfLoaded(siteOfBytes(bytes, path, ask.state ?? null), path, ask), isStored: false };
  }
  if (bytes.length > studyFileLimit)
    throw new Stop(exitCode.input, `${path}: it is larger than 128 MiB. Is it the right file?`);
  const study = readStoredStudy(new TextDecoder('utf-8').decode(bytes), path);
  const { state } = ask;
  if (state !== undefined && study.state.id !== state)
    throw new Stop(
      exitCode.input,
      `${path}: this stored study is of the site ${study.state.id === 'as typed' ? 'as typed' : `in state ${study.state.id}`}, and state "${state}" was asked for. Name the site file instead, or store that state: evenground check FILE --state ${state} --json -o ${basename(path)}`,
    );
  return { study, isStored: true };
}

/** Studies of several files; when some cannot be used, what is wrong with each of them is said at once. */
export function studiesFrom(
  paths: readonly string[],
  askOf: (path: string, i: number) => StudyAsk,
): readonly StudyFrom[] {
  const stops: Stop[] = [];
  const found = paths.flatMap((path, i) => {
    try {
      return [studyFrom(path, askOf(path, i))];
    } catch (error) {
      if (!(error instanceof Stop)) throw error;
      stops.push(error);
      return [];
    }
  });
  if (stops.length === 0) return found;
  const sentences = [...new Set(stops.map((stop) => stop.message))];
  throw new Stop(stops[0]!.code, sentences.join('\n'));
}
