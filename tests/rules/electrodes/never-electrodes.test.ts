import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { verdictsOf } from '../verdicts-of.ts';

const header =
  'site: {name: Never, region: us, units: ft, service: panel}\nequipment: {panel: {kind: service panel}}\n';

describe('aluminium-never-electrode: NFPA 70 250.52(B)(2); no threshold to stand beside', () => {
  const ask = (text: string) => verdictsOf('aluminium-never-electrode', `${header}electrodes: {E: {${text}}}\n`);

  it('asks the metal where somebody spoke of it', () => {
    expect(ask('kind: rod, metal: copper-clad steel')).toEqual(['met E: other metal']);
    expect(ask('kind: rod, metal: aluminum')).toEqual(['not met E: aluminium']);
    expect(ask('kind: buried wire, wire: 2 AWG aluminium')).toEqual(['not met E: aluminium']);
    expect(ask('kind: rod, metal: unknown, length: 8 ft')).toEqual(['cannot tell E: metal unknown']);
    expect(ask('kind: rod')).toEqual([]);
  });
});

describe('electrode-bare-clean: NFPA 70 250.53(A)(1); no threshold to stand beside', () => {
  const ask = (text: string) => verdictsOf('electrode-bare-clean', `${header}electrodes: {E: {${text}}}\n`);

  it('asks where somebody spoke of its surface', () => {
    expect(ask('kind: rod, painted: no')).toEqual(['met E: bare']);
    expect(ask('kind: rod, painted: yes')).toEqual(['not met E: painted']);
    expect(ask('kind: buried wire, wire: 6 AWG insulated copper')).toEqual(['not met E: covered wire']);
    expect(ask('kind: rod, painted: unknown')).toEqual(['cannot tell E: not seen']);
    expect(ask('kind: rod')).toEqual([]);
  });
});

describe('pool-shell-never-electrode: NFPA 70 250.52(B)(3), new in 2017; no threshold to stand beside', () => {
  const ask = (more: string) =>
    verdictsOf(
      'pool-shell-never-electrode',
      `${header}supports: {mast: {kind: mast, metal: steel, sections: one piece}}
metalwork: {pool: {kind: pool}}
electrodes: {R: {kind: rod}}
conductors: {bond: {from: mast@base, to: pool}${more}}
`,
    );

  it('a bond to the pool is no lead to earth where the mast has its own', () => {
    expect(ask(', lead: {from: mast@base, to: R}')).toEqual(['met pool: not used']);
    expect(ask('')).toEqual(['not met pool: used']);
    expect(ask(', lead: {from: mast@base, to: R, present: unknown}')).toEqual(['cannot tell pool: other way']);
    const unseen = `${header}metalwork: {pool: {kind: pool}}\n`;
    expect(verdictsOf('pool-shell-never-electrode', unseen)).toEqual(['cannot tell pool: perhaps']);
    expect(verdictsOf('pool-shell-never-electrode', `${header}metalwork: {gas: {kind: gas pipe}}\n`)).toEqual([]);
  });
});

everyOutcome('aluminium-never-electrode');
everyOutcome('electrode-bare-clean');
everyOutcome('pool-shell-never-electrode');
