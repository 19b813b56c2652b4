import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { twoWaveguides } from '../two-waveguides.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;
const site = (kind: string, length: string, bonds: number, more = ', continuous: yes', header = '') => `
site: {name: Runs, region: us, units: ft, service: unknown${header}}
electrodes: {R1: {kind: rod}}
metalwork: {run: {kind: ${kind}, route: [[0 m, 0 m], [${length}, 0 m]]${more}}}
conductors: ${bonds === 0 ? 'none' : `{${Array.from({ length: bonds }, (_, i) => `c${i}: {from: run, to: R1}`).join(', ')}}`}
`;

/** MIL-HDBK-419A vol. II, read: both ends, and 50 ft (15.24 m) between bonds at most. */
describe('cable-tray-bonded', () => {
  const rule = 'cable-tray-bonded';
  const tray = (length: string, bonds: number, more?: string) =>
    verdictsOf(rule, site('cable tray', length, bonds, more));

  it('asks both ends to 50 ft, and one more beyond', () => {
    expect(tray('50 ft', 2)).toEqual(['met run: bonded']);
    expect(tray('50 ft', 1)).toEqual(['not met run: few']);
    expect(tray('51 ft', 2)).toEqual(['not met run: few']);
    expect(tray('51 ft', 3)).toEqual(['met run: bonded']);
    expect(tray('15.2 m', 2)).toEqual(['met run: bonded']);
    expect(tray('15.3 m', 2)).toEqual(['not met run: few']);
  });

  it('asks one metal, and cannot tell what nobody walked along', () => {
    expect(tray('20 ft', 2, ', continuous: no')).toEqual(['not met run: parted']);
    expect(tray('20 ft', 2, '')).toEqual(['cannot tell run: unknown']);
    for (const bonded of ['', ', bonded: unknown'])
      expect(tray('20 ft', 0, `, continuous: yes${bonded}`)).toEqual(['cannot tell run: unknown']);
    expect(tray('20 ft', 0, ', continuous: yes, bonded: no')).toEqual(['not met run: few']);
    expect(outcomeOf(rule, site('fence', '20 ft', 0))).toBe('not applicable');
  });
});

/** The same handbook, read: 50 ft. */
it('conduit-bonded asks one bond for every 50 ft', () => {
  const conduit = (length: string, bonds: number) => verdictsOf('conduit-bonded', site('conduit', length, bonds));
  expect(conduit('50 ft', 1)).toEqual(['met run: bonded']);
  expect(conduit('51 ft', 1)).toEqual(['not met run: few']);
  expect(conduit('15.2 m', 1)).toEqual(['met run: bonded']);
  expect(conduit('15.3 m', 1)).toEqual(['not met run: few']);
  expect(verdictsOf('conduit-bonded', site('conduit', '20 ft', 1, ''))).toEqual(['cannot tell run: unknown']);
  expect(outcomeOf('conduit-bonded', site('fence', '20 ft', 0))).toBe('not applicable');
});

/** MIL-HDBK-419A vol. II 1.2.4, read: 1/0 AWG, 53.5 mm². */
it('buried-services-bonded asks 1/0 AWG where a military standard is claimed', () => {
  const rule = 'buried-services-bonded';
  const pipe = (wire: string, header = ', claims: MIL-HDBK-419A') =>
    site('water pipe', '20 ft', 1, ', buried: yes', header).replace('to: R1', `to: R1, wire: ${wire}`);
  expect(verdictsOf(rule, pipe('1/0 AWG copper'))).toEqual(['met run: thick']);
  expect(verdictsOf(rule, pipe('1 AWG copper'))).toEqual(['not met run: thin']);
  expect(verdictsOf(rule, pipe('53.5 mm2 copper'))).toEqual(['met run: thick']);
  expect(verdictsOf(rule, pipe('53 mm2 copper'))).toEqual(['not met run: thin']);
  expect(verdictsOf(rule, pipe('unknown'))).toEqual(['cannot tell run: size unknown']);
  expect(verdictsOf(rule, pipe('1/0 AWG galvanised steel'))).toEqual(['cannot tell run: metal not listed']);
  expect(verdictsOf(rule, pipe('1/0 AWG'))).toEqual(['cannot tell run: metal unknown']);
  expect(outcomeOf(rule, pipe('6 AWG copper', ''))).toBe('not applicable');
});

/** MIL-HDBK-419A vol. II, read: within 6 ft. */
describe('waveguides-bonded-together', () => {
  const rule = 'waveguides-bonded-together';

  it('asks a tie within 6 ft, in feet and in metres', () => {
    expect(verdictsOf(rule, twoWaveguides('6 ft'))).toEqual(['not met w1 w2: apart']);
    expect(verdictsOf(rule, twoWaveguides('5.9 ft'))).toEqual(['not met w1 w2: apart']);
    expect(verdictsOf(rule, twoWaveguides('6.1 ft'))).toEqual(['met w1 w2: far']);
    expect(verdictsOf(rule, twoWaveguides('1.82 m'))).toEqual(['not met w1 w2: apart']);
    expect(verdictsOf(rule, twoWaveguides('1.83 m'))).toEqual(['met w1 w2: far']);
    expect(verdictsOf(rule, twoWaveguides('1 ft', 't: {from: one, to: other}'))).toEqual(['met w1 w2: tied']);
  });

  it('cannot tell without a distance, and is asked of rigid lines', () => {
    expect(verdictsOf(rule, twoWaveguides('unknown'))).toEqual(['cannot tell w1 w2: unknown']);
    expect(outcomeOf(rule, twoWaveguides('1 ft').replace('cable: waveguide', 'cable: RG-213'))).toBe('not applicable');
  });
});

describe('runs of a facility on each side', () => {
  eitherSide('cable-tray-bonded', (length) => site('cable tray', length, 2), [
    ['50 ft', '51 ft'],
    ['15.2 m', '15.3 m'],
  ]);
  eitherSide('conduit-bonded', (length) => site('conduit', length, 1), [
    ['50 ft', '51 ft'],
    ['15.2 m', '15.3 m'],
  ]);
  const pipe = (wire: string) =>
    site('water pipe', '20 ft', 1, ', buried: yes', ', claims: MIL-HDBK-419A').replace(
      'to: R1',
      `to: R1, wire: ${wire}`,
    );
  eitherSide('buried-services-bonded', pipe, [
    ['1/0 AWG copper', '105 kcmil copper'],
    ['53.5 mm2 copper', '53 mm2 copper'],
  ]);
});

everyOutcome('cable-tray-bonded', { limits: 'how far bonds are apart is said by their number' });
everyOutcome('conduit-bonded', { limits: 'how far bonds are apart is said by their number' });
everyOutcome('buried-services-bonded');
everyOutcome('waveguides-bonded-together');
