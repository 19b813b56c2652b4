import { expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A mast on a bar, the bar on a second one, that one on the rod. */
function ask(middle: string, region = 'us') {
  return verdictsOf(
    'path-minimum-area',
    `site: {name: Way, region: ${region}, units: m, service: none}
electrodes: {rod: {kind: rod}}
supports: {mast: {kind: mast, metal: steel, sections: one piece}}
bars: {one: {kind: entry panel}, two: {kind: station ground bar}}
conductors:
  lead: {from: mast@base, to: one, wire: 25 mm2 copper}
  middle: {from: one, to: two${middle}}
  end: {from: two, to: rod, wire: 25 mm2 copper}
`,
  );
}

// NFPA 70 810.21(H): 10 AWG copper (5.26 mm2); IEC 60728-11: 16 mm2
it('looks past the lead, either side of its least size, in both systems', () => {
  expect(ask(', wire: 10 AWG copper')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 5.3 mm2 copper')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 12 AWG copper')).toEqual(['not met middle: small', 'met end: enough']);
  expect(ask(', wire: 5.2 mm2 copper')).toEqual(['not met middle: small', 'met end: enough']);
  expect(ask(', wire: 32 kcmil copper', 'iec')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 15.9 mm2 copper', 'iec')).toEqual(['not met middle: small', 'met end: enough']);
  expect(ask(', wire: 16 mm2 copper', 'iec')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 6 AWG copper', 'iec')).toEqual(['not met middle: small', 'met end: enough']);
});

// IEC 60728-11 (second-hand): 25 mm2 of insulated aluminium, 50 mm2 steel; of bare aluminium and of clad steel it has no figure.
// NFPA 70 810.21(H) (second-hand): 8 AWG aluminium (8.37 mm2), 17 AWG copper-clad steel; of plain steel it has none.
it('takes each metal by its own figure, and cannot tell where there is none', () => {
  expect(ask(', wire: 25 mm2 aluminium insulated', 'iec')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 24 mm2 aluminium insulated', 'iec')[0]).toBe('not met middle: small');
  expect(ask(', wire: 25 mm2 aluminium bare', 'iec')[0]).toBe('cannot tell middle: bare aluminium');
  expect(ask(', wire: 200 mm2 aluminium bare', 'iec')[0]).toBe('cannot tell middle: bare aluminium');
  expect(ask(', wire: 25 mm2 aluminium', 'iec')[0]).toBe('cannot tell middle: cover unknown');
  // too thin for what is insulated is too thin bare
  expect(ask(', wire: 24 mm2 aluminium bare', 'iec')[0]).toBe('not met middle: small');
  expect(ask(', wire: 50 mm2 galvanised steel', 'iec')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 60 mm2 copper-clad steel', 'iec')[0]).toBe('cannot tell middle: metal not listed');
  expect(ask(', wire: 8 AWG aluminium bare')).toEqual(['met end: enough', 'met middle: enough']);
  expect(ask(', wire: 9 AWG aluminium bare')[0]).toBe('not met middle: small');
  expect(ask(', wire: 50 mm2 galvanised steel')[0]).toBe('cannot tell middle: metal not listed');
});

it('leaves an unknown size to the conditions of that wire: it is asked about once', () => {
  expect(ask('')).toEqual(['met end: enough']);
  expect(ask(', wire: 25 mm2', 'iec')).toEqual(['met end: enough']);
});

it('is not asked where nothing leads from a mast to an electrode', () => {
  const apart =
    'site: {name: Way, region: us, service: none}\nconductors: {c: {from: a, to: unknown}}\nbars: {a: {kind: other}}\n';
  expect(findingsOf('path-minimum-area', apart).outcome).toBe('not applicable');
});

everyOutcome('path-minimum-area');
