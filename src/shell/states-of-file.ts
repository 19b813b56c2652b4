import type { Study } from '../study/study.ts';
import { compareWords } from '../words/compare-words.ts';
import { say } from '../words/say.ts';
import { besideSite } from './beside-site.ts';
import { exitCode, Stop } from './exit-code.ts';
import { readBytes } from './files.ts';
import { siteOfBytes } from './load-site.ts';
import { looksStored, studyFileLimit } from './stored-study.ts';
import { type StudyAsk, studyOfSite } from './study-of-file.ts';

/** Name under which the file as it is typed is asked for; no state can have it. */
const asTyped = 'as typed';

/** `typed` is the file as typed. */
export const typedState = (id: string): string => (id === 'typed' ? asTyped : id);

/** Studies of one file in these states, in their order; none named: as typed, then in each of its states. */
export function statesOfFile(file: string, states: readonly string[], ask: Omit<StudyAsk, 'state'>): readonly Study[] {
  const { input } = compareWords;
  const speech = { terms: 'us', unitsFirst: 'us' } as const;
  const bytes = readBytes(file, studyFileLimit);
  if (looksStored(bytes)) throw new Stop(exitCode.input, say(input.statesStored, { file }, speech));
  const { site, checksum } = siteOfBytes(bytes, file, null);
  const known = site.states.map((s) => s.id);
  if (known.length === 0) throw new Stop(exitCode.input, say(input.noStates, { file }, speech));
  const unknown = states.filter((id) => id !== asTyped && !known.includes(id));
  if (unknown.length > 0)
    throw new Stop(exitCode.input, say(input.noSuchState, { file, list: unknown, known }, speech));
  const beside = besideSite(site, file);
  return (states.length === 0 ? [asTyped, ...known] : states).map((id) =>
    studyOfSite(site, checksum, id === asTyped ? ask : { ...ask, state: id }, beside),
  );
}
