import { type Speech, say } from './say.ts';
import { sayWork } from './say-work.ts';
import { workWords } from './work-words.ts';

/** What each kind of work is called on a page, and in a sentence for whoever does it; `{at}` the parts that it is about. */
const titles: Readonly<Record<string, { readonly title: string; readonly what: string }>> = {
  bond: {
    title: 'Bond {at}',
    what: 'Join {at} by one conductor that stays: today nothing that is a bond holds them together.',
  },
  'second-path': {
    title: 'A second way for {at}',
    what: 'Lay one more conductor for {at}, apart from the one that is there, so that a single failure undoes nothing.',
  },
  'close-ring': {
    title: 'Close the ring of {at}',
    what: 'Lay the conductor that is missing, so that {at} are joined all round.',
  },
  'tie-metalwork': { title: 'Bond {first}', what: 'Join the metal of {first} to {others} by one conductor.' },
  'add-rods': {
    title: 'More [rod]s for {first}',
    what: 'Drive more [rod]s for {first} and join them as it stands below.',
  },
  'deepen-rod': { title: 'Drive {first} deeper', what: 'Couple another length onto {first} and drive it down.' },
  'replace-joint': { title: 'New joints: {joints}', what: 'Make the joint anew at {joints}.' },
  'replace-conductor': {
    title: 'New conductor for {first}',
    what: 'Replace {first} by a conductor of the size below.',
  },
  'add-protector': { title: 'A protector for {first}', what: 'Mount a protector for {first} where it stands below.' },
  'move-arrester': { title: 'Move {first}', what: 'Mount {first} on its new place and join its lines there.' },
  'move-panel': {
    title: 'Move {first}',
    what: 'Mount {first} at its new place and lead its lines and its bond there.',
  },
  'move-line': { title: 'Lead {first} another way', what: 'Lead {first} by the stops below.' },
  'put-right': { title: 'Put right: {at}', what: 'Make {at} as it is described here.' },
};

/** A work as far as its words go. */
export interface NamedWork {
  readonly kind: string;
  readonly at: readonly string[];
  readonly values: Readonly<Record<string, unknown>>;
}

/** What a work is called: by its own sentences where it has them, else by its kind and what it is about. */
export function workTitle(work: NamedWork, speech: Speech): string {
  if (hasOwnWords(work)) return sayWork(work.values, speech).title;
  return say(titles[work.kind]?.title ?? '{at}', valuesOf(work.at), speech);
}

/** What it is good for; '' where only its findings tell. */
export function workReason(work: NamedWork, speech: Speech): string {
  return hasOwnWords(work) ? sayWork(work.values, speech).why : '';
}

/** What is done, step by step; `names` are those of `at` as the page calls them. */
export function workSteps(work: NamedWork, names: readonly string[], speech: Speech): readonly string[] {
  if (hasOwnWords(work)) return sayWork(work.values, speech).steps;
  return [say(titles[work.kind]?.what ?? '{at}', valuesOf(names), speech)];
}

function hasOwnWords({ values }: NamedWork): boolean {
  return Object.hasOwn(workWords, String(values.words));
}

/** Joints where there are some: `c1:E1` says which of a conductor's. */
function valuesOf(names: readonly string[]): Readonly<Record<string, string>> {
  const joints = names.filter((n) => n.includes(':'));
  const others = names.slice(1).join(and);
  return {
    at: names.join(and),
    first: names[0] ?? '',
    others: others === '' ? elsewhere : others,
    joints: (joints.length === 0 ? names : joints).join(and),
  };
}

const and = ' and ';
const elsewhere = 'what it lands on below';
