import { type Speech, say, type Value } from './say.ts';
import { type WorkWords, type WorkWordsKey, workWords } from './work-words.ts';

export interface SaidWork {
  readonly title: string;
  readonly why: string;
  readonly steps: readonly string[];
}

/** The sentences of a work, by the values that it carries. RangeError: there are none under its key. */
export function sayWork(values: Readonly<Record<string, unknown>>, speech: Speech): SaidWork {
  const key = String(values.words);
  const words: WorkWords | undefined = Object.hasOwn(workWords, key) ? workWords[key as WorkWordsKey] : undefined;
  if (words === undefined) throw new RangeError(`no sentences for works of the kind ${key}`);
  const filled = Object.fromEntries(Object.entries(values).filter((v): v is [string, Value] => isValue(v[1])));
  const told = words.steps.filter(
    (step) => typeof step === 'string' || [step.when].flat().some((name) => isKnown(values[name])),
  );
  return {
    title: say(words.title, filled, speech),
    why: say(words.why, filled, speech),
    steps: told.map((step) => say(typeof step === 'string' ? step : step.says, filled, speech)),
  };
}

function isKnown(value: unknown): boolean {
  return value !== null && value !== undefined && value !== 0 && value !== '';
}

function isValue(value: unknown): value is Value {
  if (value === null || typeof value === 'string' || typeof value === 'number') return true;
  return typeof value === 'object';
}
