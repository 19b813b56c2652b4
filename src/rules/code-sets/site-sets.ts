import type { Region, SiteHeader } from '../../site/site.ts';
import type { CodeSet, Rule } from '../rule.ts';

/** Whose conditions a site asks, in the order of its columns; the first leads where only one can. */
export function siteSets(header: Pick<SiteHeader, 'region' | 'codeSets'>): readonly Region[] {
  const sets = header.codeSets ?? [header.region];
  return sets.length === 0 ? [header.region] : sets;
}

/**
 * Whether the set of a region asks a rule. 'any' is asked everywhere; a region that nobody gave is asked the US set, as the
 * commonest; the United Kingdom is asked the IEC set too, which its own documents take over.
 */
export function setAsks({ codeSets }: Pick<Rule, 'codeSets'>, set: Region): boolean {
  return codeSets.some((s) => s === 'any' || within[set].includes(s));
}

/** The set of the record under which a region is asked a rule. */
export function codeSetOf({ codeSets }: Pick<Rule, 'codeSets'>, set: Region): CodeSet {
  return codeSets.find((s) => s === set) ?? codeSets.find((s) => within[set].includes(s)) ?? codeSets[0]!;
}

const within: Readonly<Record<Region, readonly CodeSet[]>> = {
  us: ['us'],
  ca: ['ca'],
  iec: ['iec'],
  uk: ['uk', 'iec'],
  au: ['au'],
  unknown: ['us'],
};
