import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** IEC 62305-3 clause 8 (2010), from memory: 3 m; fence, warning, or a layer that insulates. It has no figure of the site. */
describe('step-and-touch-zone', () => {
  const rule = 'step-and-touch-zone';
  const site = (mast: string, region = 'iec') =>
    `site: {name: Foot, region: ${region}, units: m, service: unknown}\nsupports: {mast: {kind: ${mast}}}\n`;

  it.each([
    ['lattice tower, reach: fenced', 'met mast: fenced'],
    ['lattice tower, reach: signed', 'met mast: signed'],
    ['lattice tower, reach: public, insulating_surface: yes', 'met mast: surfaced'],
    ['lattice tower, reach: public, insulating_surface: no', 'not met mast: open'],
    ['lattice tower, reach: public', 'cannot tell mast: surface unknown'],
    ['lattice tower, insulating_surface: no', 'cannot tell mast: reach unknown'],
    ['lattice tower', 'cannot tell mast: nobody said'],
  ])('%s: %s', (mast, expected) => expect(verdictsOf(rule, site(mast))).toEqual([expected]));

  it('does not ask a pole in a loft that carries an indoor antenna', () => {
    const loft = (where: string) =>
      `${site(`mast, where: ${where}, reach: public, insulating_surface: no`)}antennas: {whip: {kind: vertical, on: mast@top, where: ${where}}}\nbuildings: {house: {}}\n`;
    expect(verdictsOf(rule, loft('outside'))).toEqual(['not met mast: open']);
    expect(verdictsOf(rule, loft('house'))).toEqual([]);
  });

  it('asks masts of metal on the ground, in IEC countries and the United Kingdom', () => {
    for (const kind of ['roof mast', 'wood pole', 'mast, metal: none'])
      expect(findingsOf(rule, site(kind)).outcome).toBe('not applicable');
    expect(verdictsOf(rule, site('mast, reach: public, insulating_surface: no', 'uk'))).toEqual(['not met mast: open']);
    expect(findingsOf(rule, site('mast', 'us')).outcome).toBe('not applicable');
    expect(findingsOf(rule, 'site: {region: iec, units: m, service: unknown}\n').outcome).toBe('not looked at');
  });
});

/** Common practice, no source. */
describe('earth-rod-clear-of-buried-services', () => {
  const rule = 'earth-rod-clear-of-buried-services';
  const site = (header: string, known: string) => `site: {name: Dig, region: us, units: ft, service: unknown${header}}
electrodes: {old: {kind: rod}, R1: {kind: rod, known: ${known}}}
conductors: {trench: {from: old, to: R1, buried: 2 ft, known: ${known}}, wall: {from: old, to: R1, known: ${known}}}
`;

  it('asks before anything is dug or driven', () => {
    expect(verdictsOf(rule, site('', 'planned'))).toEqual(['cannot tell R1 trench: nobody said']);
    expect(verdictsOf(rule, site(', services_located: yes', 'planned'))).toEqual(['met R1 trench: located']);
    expect(verdictsOf(rule, site(', services_located: no', 'planned'))).toEqual(['not met R1 trench: not located']);
  });

  it('is not asked of what stands already', () => {
    expect(findingsOf(rule, site('', 'seen')).outcome).toBe('not applicable');
  });
});

everyOutcome('step-and-touch-zone');
everyOutcome('earth-rod-clear-of-buried-services');
