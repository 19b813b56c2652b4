import { ruleIds } from '../../src/rules/rule-ids.ts';
import type { Claim, Layout } from './claim.ts';

/** A good design: no rule may find a hazard or a defect anywhere on it. */
function nothingFound(file: string): readonly Claim[] {
  return ruleIds.flatMap((finding) =>
    (['hazard', 'defect'] as const).map((severity) => ({
      says: `A good design shows no ${severity} by ${finding}.`,
      ask: { finding, severity },
      ofFile: file,
    })),
  );
}

export const layout: Layout = {
  id: 'case-46',
  title: "Direct hit on a vertical tied to the building's lightning protection (Germany)",
  sources: [
    'https://www.yumpu.com/de/document/view/3008258/elektrische-sicherheit-und-blitzschutz-fur-amateurfunkanlagen/10',
  ],
  grade: 'A',
  files: ['case-46.site.yaml', 'case-46-whole.site.yaml'],
  must: [
    {
      says: 'The mast is on the lightning protection of the building.',
      ask: { together: ['mast', 'lightning-earth'] },
    },
    {
      says: 'So it is earthed.',
      ask: { finding: 'iec-mast-earthed', at: 'mast', outcome: 'met' },
    },
    {
      says: 'Both ends of the roof conductor lead there.',
      ask: { way: ['mast', 'lightning-earth'] },
    },
    {
      says: 'With nothing left open, mast, entry and main earthing bar are one system.',
      ask: { together: ['mast', 'lightning-earth', 'entry', 'main-bar', 'house-panel'] },
      ofFile: 'case-46-whole.site.yaml',
    },
    {
      says: 'The feed line has its gas tube.',
      ask: { finding: 'arrester-on-every-feed-line', at: 'coax-1', outcome: 'met' },
      ofFile: 'case-46-whole.site.yaml',
    },
    {
      says: 'And its shield is bonded before it goes in.',
      ask: { finding: 'shield-bonded-at-entry', at: 'coax-1', outcome: 'met' },
      ofFile: 'case-46-whole.site.yaml',
    },
  ],
  mustNot: [
    {
      says: 'A gas tube before the radio protects the core of the first line.',
      ask: { coreUnprotected: 'coax-1' },
    },
    { says: 'And of the second.', ask: { coreUnprotected: 'coax-2' } },
    {
      says: 'What the report leaves open is not found wanting: the mast stands on its earth.',
      ask: { finding: 'iec-antenna-electrode-to-main-bar' },
    },
    ...nothingFound('case-46.site.yaml'),
    ...nothingFound('case-46-whole.site.yaml'),
  ],
  notYet: [
    {
      sentence: 'Low risk to the radios, high to the antenna.',
      because: 'needs the strike calculation',
    },
    {
      sentence: 'After a strike, replace every gas tube.',
      because: 'what to inspect after a strike is report wording',
    },
    { sentence: 'The insurer paid for the antenna in full.', because: 'an outcome, not a property of the layout' },
  ],
};
