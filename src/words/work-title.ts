import type { Speech } from './say.ts';
import { say } from './say.ts';

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
  'tie-metalwork': { title: 'Bond {at}', what: 'Join the metal of {at} to the [electrode]s by one conductor.' },
  'add-rods': { title: 'More [rod]s for {at}', what: 'Drive more [rod]s and join them to {at}.' },
  'deepen-rod': { title: 'Drive {at} deeper', what: 'Couple another length onto {at} and drive it down.' },
  'replace-joint': { title: 'New joint at {at}', what: 'Make the joint anew at {at}.' },
  'replace-conductor': { title: 'New conductor for {at}', what: 'Replace {at} by a conductor of the size below.' },
  'add-protector': { title: 'A protector for {at}', what: 'Mount a protector for {at} where it stands below.' },
  'move-arrester': { title: 'Move {at}', what: 'Mount {at} on its new place and join its lines there.' },
  'move-panel': { title: 'Move {at}', what: 'Mount {at} at its new place and lead its lines and its bond there.' },
  'move-line': { title: 'Lead {at} another way', what: 'Lead {at} by the stops below.' },
  'put-right': { title: 'Put {at} right', what: 'Make {at} as it is described below.' },
};

export function workTitle(kind: string, at: string, speech: Speech): string {
  return say(titles[kind]?.title ?? '{at}', { at }, speech);
}

export function workSentence(kind: string, at: string, speech: Speech): string {
  return say(titles[kind]?.what ?? '{at}', { at }, speech);
}
