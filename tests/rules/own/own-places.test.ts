import { describe, expect, it } from 'vitest';
import { ownFindings, ownStudy } from './own-study.ts';

describe('the lead of an arrester as an owner asks it', () => {
  const arrester = (of: string, conductors = '') => `site: {name: Own, region: us, units: ft, service: unknown}
electrodes: {r: {kind: rod}}
bars: {entry: {kind: entry panel, where: outside}}
arresters: {g: {kind: gas tube, where: outside${of}}}
conductors: {e: {from: entry, to: r}${conductors}}
`;
  const outcomes = (text: string) =>
    ownFindings(ownStudy(text, 'limits: {short: {of: arresters, lead: at most 6 in}}')).map((f) => [f.id, f.outcome]);
  const all = (outcome: string) => [['own/own-short:g', outcome]];

  it('is the conductor that is typed for it, at both sides of the limit', () => {
    expect(outcomes(arrester('', ', l: {from: g, to: entry, length: 25 ft}'))).toEqual(all('not met'));
    expect(outcomes(arrester('', ', l: {from: g, to: entry, length: 6 in}'))).toEqual(all('met'));
    expect(outcomes(arrester('', ', l: {from: g, to: entry, length: 4 to 8 in}'))).toEqual(all('cannot tell'));
  });

  it('is none where it is bolted to a bar', () => {
    expect(outcomes(arrester(', on: entry, joint: bolted lug'))).toEqual(all('met'));
  });

  it('is as typed of the arrester, whatever else is there', () => {
    expect(outcomes(arrester(', on: entry, joint: bolted lug, lead: 1 ft'))).toEqual(all('not met'));
    expect(outcomes(arrester(', lead: 3 in', ', l: {from: g, to: entry, length: 25 ft}'))).toEqual(all('met'));
  });

  it('cannot be told of a wire of no known length, of two wires, or of none', () => {
    expect(outcomes(arrester('', ', l: {from: g, to: entry}'))).toEqual(all('cannot tell'));
    const two = ', l: {from: g, to: entry, length: 3 in}, m: {from: g, to: r, length: 25 ft}';
    expect(outcomes(arrester('', two))).toEqual(all('cannot tell'));
    expect(outcomes(arrester(''))).toEqual(all('cannot tell'));
  });
});

describe('the earth of a whole site as an owner asks it', () => {
  const site = (service: string, more: string, conductors = 't: {from: r, to: r2, length: 20 ft}') =>
    `site: {name: Own, region: us, units: ft, service: ${service}}
electrodes:
  r: {kind: rod, length: 8 ft, diameter: 5/8 in, at: [0, 0]}
  r2: {kind: rod, length: 8 ft, diameter: 5/8 in, at: [20, 0]}
bars: {main: {kind: station ground bar}}
${service === 'panel' ? 'equipment: {panel: {kind: service panel}}\n' : ''}conductors: {${conductors}}
${more}`;
  const joined = 't: {from: r, to: r2, length: 20 ft}, m: {from: main, to: r, length: 3 ft}';
  const of = (text: string, limit = 'at most 5 ohm') =>
    ownFindings(ownStudy(text, `name: club rules\nlimits: {ohms: {of: site, resistance: ${limit}}}`));
  const said = (text: string, limit?: string) => of(text, limit).map((f) => [f.at.join(' '), f.outcome]);

  it.each(['none', 'unknown'])('cannot be told of joined rods with the service %s and no soil', (service) => {
    const [finding, ...others] = of(site(service, ''));
    expect(others).toEqual([]);
    expect([finding!.id, finding!.outcome, finding!.tool]).toEqual([
      'own/own-ohms:r+r2',
      'cannot tell',
      'earth tester',
    ]);
    expect(finding!.because.text).toMatch(/^The resistance to ground of r, r2, joined, is not known well enough/);
    expect(finding!.remedy).toMatch(/^Take a fall-of-potential reading of the whole .* or type the soil\.$/);
  });

  it('is told by what that asks for: a reading of the whole, or the soil', () => {
    const reading = (ohm: string) =>
      `readings: {f: {kind: fall of potential, electrode: main, resistance: [${ohm}], current_probe: 200 ft}}`;
    expect(said(site('none', reading('4 ohm'), joined))).toEqual([['r r2', 'met']]);
    expect(said(site('none', reading('6 ohm'), joined))).toEqual([['r r2', 'not met']]);
    const soil = 'soil: {layers: [{resistivity: 100 ohm m}]}';
    // two rods of 8 ft in 100 ohm m: some 20 ohm
    expect(said(site('none', soil))).toEqual([['r r2', 'not met']]);
    expect(said(site('none', soil), 'at most 50 ohm')).toEqual([['r r2', 'met']]);
  });

  it('is called that of the electrodes, not of the panel', () => {
    const served = site('panel', '', `${joined}, p: {from: panel, to: r, length: 3 ft}`);
    const [finding] = of(served);
    expect([finding!.at, finding!.outcome]).toEqual([['r', 'r2'], 'cannot tell']);
    expect(`${finding!.title} ${finding!.because.text} ${finding!.remedy}`).not.toMatch(/`resistance:`|panel:/);
    const [high] = of(`${served}soil: {layers: [{resistivity: 100 ohm m}]}`);
    expect(high!.title).toBe('The system of r, r2 does not meet ohms of club rules');
  });

  it('cannot be told of rods that stand apart, each by itself', () => {
    expect(said(site('none', '', 'm: {from: main, to: r, length: 3 ft}'))).toEqual([
      ['r', 'cannot tell'],
      ['r2', 'cannot tell'],
    ]);
    expect(of(site('none', '', 'm: {from: main, to: r, length: 3 ft}'))[0]!.remedy).toMatch(/^Join the grounding elec/);
  });

  it('cannot be told of a service with no electrode of its own, whatever stands apart', () => {
    const apart = site('panel', 'soil: {layers: [{resistivity: 100 ohm m}]}');
    expect(said(apart)).toEqual([['panel', 'cannot tell']]);
    expect(of(apart)[0]!.remedy).toMatch(/^Type the grounding electrodes of panel/);
  });

  it('asks nothing where there is neither service nor electrode', () => {
    const bare = 'site: {name: Own, region: us, units: ft, service: none}\nelectrodes: none\n';
    expect(said(bare)).toEqual([]);
  });
});
