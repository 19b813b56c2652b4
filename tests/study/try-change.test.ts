import { describe, expect, it } from 'vitest';
import type { SiteChange } from '../../src/site/change.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { tryChange } from '../../src/study/try-change.ts';

const options = { state: null, version: '0', checksum: '', date: null };

/** Rod E2 at a mast that nothing ties to the service; a coax without a protector; a joint and a rod that no clause allows. */
const station = `
site: {name: Hill, region: us, units: ft, service: panel, supply: us-grounded, without: [telephone, network, cable tv]}
buildings:
  hut: {}
electrodes:
  E1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  E2: {kind: rod, length: 6 ft, diameter: 5/8 in, metal: copper-clad steel}
supports:
  tower: {kind: lattice tower, height: 40 ft, metal: galvanised steel, sections: bolted}
  pole: {kind: mast, height: 20 ft, metal: galvanised steel, sections: one piece}
antennas:
  beam: {kind: yagi, on: tower@top, dc_path: yes, touches_support: yes}
bars:
  entry: {kind: entry panel, where: outside}
arresters: none
equipment:
  panel: {kind: service panel, where: hut, neutral_bonded: yes}
  radio: {kind: transceiver, where: hut, power: 100 W}
lines:
  coax: {kind: coax, path: [beam, radio], length: 80 ft}
conductors:
  c1: {from: panel, to: E1, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, clamp1]}
  c2: {from: tower@base, to: E2, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, clamp2]}
  c3: {from: entry, to: E1, wire: 12 AWG copper, length: 20 ft, joints: [bolted lug, acorn]}
joints:
  clamp1: {kind: rod clamp, on: E1, listed: yes, for_burial: no}
  clamp2: {kind: hose clamp, on: E2}
  acorn: {kind: acorn clamp, on: E1, listed: yes, for_burial: yes}
metalwork: none
`;

const before = runStudy(readSite(station, 'hill.site.yaml').site!, options).study;

function standing(study: typeof before, rule: string, at: string) {
  return study.findings.find((f) => f.rule === rule && f.at.includes(at) && f.outcome === 'not met');
}

describe('the change that a finding carries', () => {
  it.each([
    ['all-electrodes-one-system', 'E2'],
    ['mast-grounded', 'pole'],
    ['arrester-on-every-feed-line', 'coax'],
    ['joint-method-allowed', 'clamp2'],
    ['rod-length-us', 'E2'],
    ['mast-ground-size', 'c3'],
  ])('of %s at %s puts it right, and nothing worse comes of it', (rule, at) => {
    const finding = standing(before, rule, at);
    expect(finding, `${rule} stands before`).toBeDefined();
    expect(finding!.change?.length, 'it carries a change').toBeGreaterThan(0);
    const tried = tryChange(station, 'hill.site.yaml', finding!.change as readonly SiteChange[], options);
    if ('problem' in tried) throw new Error(JSON.stringify(tried.problem));
    const after = tried.run.study;
    expect(standing(after, rule, at)).toBeUndefined();
    expect(after.verdict.hazards).toBeLessThanOrEqual(before.verdict.hazards);
  });

  it('of a lone rod that nobody measured adds a second one beside it', () => {
    const lone = station.replace('  E1: {kind: rod', '  lone: {kind: rod, length: 8 ft}\n  E1: {kind: rod');
    const text = lone.replace('lone: {', 'lone: {note: by itself, ');
    const study = runStudy(readSite(text, 'hill.site.yaml').site!, options).study;
    const finding = standing(study, 'single-rod-25-ohm', 'lone');
    const tried = tryChange(text, 'hill.site.yaml', finding!.change as readonly SiteChange[], options);
    if ('problem' in tried) throw new Error(JSON.stringify(tried.problem));
    expect(standing(tried.run.study, 'single-rod-25-ohm', 'lone')).toBeUndefined();
    expect(tried.text).toContain('rod-lone: {kind: rod, length: 8 ft');
  });

  it('leaves the rest of the text as it is', () => {
    const finding = standing(before, 'all-electrodes-one-system', 'E2')!;
    const tried = tryChange(station, 'hill.site.yaml', finding.change as readonly SiteChange[], options);
    if ('problem' in tried) throw new Error(JSON.stringify(tried.problem));
    const added = tried.text.split('\n').filter((line) => !station.split('\n').includes(line));
    expect(added).toEqual([
      '  bond-E2-panel: {from: E2, to: panel, wire: 6 AWG copper, joints: [exothermic weld, exothermic weld], known: planned}',
    ]);
  });

  it('that cannot be made says why', () => {
    const change: SiteChange = { is: 'set', section: 'electrodes', id: 'E9', field: 'length', value: '8 ft' };
    const tried = tryChange(station, 'hill.site.yaml', [change], options);
    expect('problem' in tried && tried.problem.key).toBe('change-not-there');
  });
});
