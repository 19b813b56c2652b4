import { defaultWords } from './default-words.ts';
import { problemWords } from './problems.ts';
import { questionWords } from './question-words.ts';

/** What is wrong with a file, and where; the same shape as the reader's. */
export interface SayableProblem {
  readonly source: { readonly line: number; readonly column: number };
  readonly path: string;
  readonly key: string;
  readonly values: Readonly<Record<string, string | number>>;
  readonly near: string | null;
}

/** `file:line:column: path: what is wrong; did you mean this? What to do.` */
export function sayProblem(problem: SayableProblem, file: string): string {
  const { source, path, key, values, near } = problem;
  const words = Object.hasOwn(problemWords, key) ? problemWords[key] : undefined;
  const wrong = fill(words?.wrong ?? `it cannot be used (${key})`, values);
  const meant = near === null ? '' : `; did you mean \`${tidy(near)}\`?`;
  const end = meant === '' ? '.' : '';
  const todo = fill(words?.todo ?? 'Look at this place of the file.', values);
  const where = path === '' ? '' : `${tidy(path)}: `;
  return `${file}:${source.line}:${source.column}: ${where}${wrong}${meant}${end} ${todo}`;
}

/** One sentence that asks about something accepted. */
export function sayQuestion(question: Pick<SayableProblem, 'key' | 'values'>): string {
  const words = Object.hasOwn(questionWords, question.key) ? questionWords[question.key] : undefined;
  return fill(words ?? `Is this right (${question.key})?`, question.values);
}

/** What a default that had to be taken means for the result. */
export function sayDefault(key: string): string {
  return (Object.hasOwn(defaultWords, key) ? defaultWords[key] : undefined) ?? 'Taken because the file does not say.';
}

function fill(template: string, values: SayableProblem['values']): string {
  return template.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    return value === undefined ? whole : tidy(String(value));
  });
}

/** Text of the file on one line, without control characters, cut where it is long. */
function tidy(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out.
  const line = text.replace(/[\u0000-\u001F\u007F-\u009F\u2028\u2029\u202A-\u202E\u2066-\u2069]+/g, ' ');
  return line.length > 300 ? `${[...line].slice(0, 297).join('')}...` : line;
}
