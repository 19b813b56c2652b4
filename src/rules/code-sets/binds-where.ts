import type { Region } from '../../site/site.ts';
import { onceForText } from '../../units/once-for-text.ts';

/** Documents that are law or contract in some countries and nowhere else; all others are asked wherever a rule says. */
const homes: readonly { readonly document: RegExp; readonly regions: readonly Region[] }[] = [
  { document: /^NFPA 70\b/, regions: ['us', 'unknown'] },
  { document: /^NFPA 780\b/, regions: ['us', 'unknown'] },
  { document: /^TIA-222\b/, regions: ['us', 'unknown'] },
  { document: /^UL 96A\b/, regions: ['us', 'unknown'] },
  { document: /^(?:MIL-|Army |UFGS |TM 5-|FAA-|MO-322|29 CFR )/, regions: ['us', 'unknown'] },
  { document: /^Canadian Electrical Code\b/, regions: ['ca'] },
  { document: /^(?:BS|BS EN) /, regions: ['uk'] },
  { document: /^AS\/NZS /, regions: ['au'] },
  { document: /^(?:IEC|EN|DIN EN IEC) /, regions: ['iec', 'uk', 'unknown'] },
];

/** Whether one of the documents that a source names (`a; b`) binds in a region; one without a country binds anywhere. */
export function bindsIn(document: string, region: Region): boolean {
  return whichBindIn(document, region).includes(true);
}

/** Where each of the documents of a source binds; null: anywhere. */
const bindingOf = onceForText((document): readonly (readonly Region[] | null)[] =>
  document.split('; ').map((one) => homes.find((h) => h.document.test(one))?.regions ?? null),
);

/** Which of the documents that a source names bind in a region, in their order. */
export function whichBindIn(document: string, region: Region): readonly boolean[] {
  return bindingOf(document).map((regions) => regions?.includes(region) ?? true);
}

/**
 * The region whose documents they are, where all that have a home share one; for the sentence that says where a figure comes
 * from. null: none has one, or they are of several.
 */
export function homeOf(document: string): Region | null {
  const found = new Set(bindingOf(document).flatMap((regions) => regions?.[0] ?? []));
  const [home] = found;
  return found.size === 1 ? home! : null;
}
