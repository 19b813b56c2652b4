import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;

/** A mast with an antenna, a panel at the wall, a radio inside; the line and what hangs on it are left to the case. */
const site = ({
  path = 'beam, a1, radio',
  kind = 'coax',
  line = '',
  arrester = ', on: entry',
  conductors = 'c1: {from: panel, to: R}, c2: {from: entry, to: R}',
  header = '',
  radio = 'where: house',
  more = '',
} = {}) => `site: {name: Entry, region: us, units: ft, service: panel${header}}
buildings: {house: {}}
electrodes: {R: {kind: rod}}
supports: {mast: {kind: mast, height: 40 ft, sections: one piece}}
antennas: {beam: {kind: yagi, on: mast@top, dc_path: no}}
bars: {entry: {kind: entry panel, where: outside}}
arresters: {a1: {kind: gas tube${arrester}}}
equipment: {panel: {kind: service panel, where: house}, radio: {kind: transceiver, ${radio}}}
lines: {feed: {kind: ${kind}, path: [${path}]${line}}}
conductors: ${conductors === '' ? 'none' : `{${conductors}}`}
${more}`;

/** NFPA 70 810.21(J) (second-hand); no threshold. */
describe('panel-tied-to-service', () => {
  const rule = 'panel-tied-to-service';

  it('asks permanent metal from the panel to the service', () => {
    expect(verdictsOf(rule, site())).toEqual(['met entry: tied']);
    expect(verdictsOf(rule, site({ conductors: 'c1: {from: panel, to: R}' }))).toEqual(['not met entry: apart']);
    const perhaps = 'c1: {from: panel, to: R}, c2: {from: entry, to: R, present: unknown}';
    expect(verdictsOf(rule, site({ conductors: perhaps }))).toEqual(['cannot tell entry: perhaps']);
    const unknown = site().replace('service: panel', 'service: unknown');
    expect(verdictsOf(rule, unknown)).toEqual(['cannot tell entry: service unknown']);
    expect(outcomeOf(rule, site().replace('service: panel', 'service: none'))).toBe('not applicable');
  });

  it('asks for the wire that its change lays, and abroad for an electrician', () => {
    const found = (region: string) => {
      const text = site({ conductors: 'c1: {from: panel, to: R}' }).replace('region: us', `region: ${region}`);
      return findingsOf(rule, text).findings[0]!;
    };
    for (const region of ['us', 'ca']) {
      expect(found(region).change).toMatchObject([{ fields: { wire: '6 AWG copper' } }]);
      expect(found(region).remedy).toMatch(/^Run .* at least 6 AWG \(13\.3 mm²\) copper from entry/);
    }
    for (const region of ['uk', 'iec', 'au']) {
      expect(found(region).change).toMatchObject([{ fields: { wire: '16 mm2 copper' } }]);
      expect(found(region).remedy).toMatch(/^Have a qualified electrician run .* at least 16 mm² copper from entry/);
      expect(found(region).remedy).toMatch(/Do not make this connection yourself\.$/);
    }
  });

  it('cannot tell of a bar with a wire that nobody traced, straight on it or further on in its group', () => {
    const wires = (more: string) => verdictsOf(rule, site({ conductors: `c1: {from: panel, to: R}, ${more}` }));
    expect(wires('c2: {from: entry, to: unknown}')).toEqual(['cannot tell entry: perhaps']);
    expect(wires('c2: {from: entry, to: mast}, c3: {from: mast, to: unknown}')).toEqual(['cannot tell entry: perhaps']);
    // an open end of the service's group says nothing of what ends on the bar
    expect(wires('c2: {from: panel, to: unknown}')).toEqual(['not met entry: apart']);
    const loose = site({ conductors: 'c1: {from: panel, to: R}, c2: {from: entry, to: unknown}' });
    const saidNo = loose.replace('kind: entry panel, where', 'kind: entry panel, bonded: no, where');
    expect(verdictsOf(rule, saidNo)).toEqual(['cannot tell entry: perhaps']);
  });
});

/** NFPA 70 810.20, 810.21, 800.100 (second-hand); no threshold. */
describe('arrester-bonded', () => {
  const rule = 'arrester-bonded';

  it('asks permanent metal from the arrester to an electrode', () => {
    expect(verdictsOf(rule, site())).toEqual(['met a1: bonded']);
    expect(verdictsOf(rule, site({ arrester: '' }))).toEqual(['not met a1: floating']);
    expect(verdictsOf(rule, site({ arrester: '', header: ', incomplete: [conductors]' }))).toEqual([
      'cannot tell a1: perhaps',
    ]);
    const none = site({ path: 'beam, radio' }).replace(/arresters: .*/, 'arresters: none');
    expect(outcomeOf(rule, none)).toBe('not applicable');
  });
});

/** Common practice, no source; no threshold but one for each wire. */
describe('arrester-on-every-feed-line', () => {
  const rule = 'arrester-on-every-feed-line';

  it('asks one on the way of each core that comes in', () => {
    expect(verdictsOf(rule, site())).toEqual(['met feed: protected']);
    expect(verdictsOf(rule, site({ path: 'beam, entry, radio' }))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, site({ path: 'beam, radio', radio: 'where: unknown' }))).toEqual([
      'cannot tell feed: place unknown',
    ]);
    expect(outcomeOf(rule, site({ path: 'beam, a1', more: '' }))).toBe('not applicable');
  });
});

/** NFPA 780, ITU-T K.56 8.3 (from memory): unprotected conductors = 0. A count of none has no unit. */
describe('arrester-on-every-control-line', () => {
  const rule = 'arrester-on-every-control-line';
  const rotor = (path: string, covers: string, wires = ', wires: 8') =>
    site({ kind: 'control', path, line: wires, arrester: `, on: entry${covers}` });

  it('counts wire by wire', () => {
    expect(verdictsOf(rule, rotor('beam, a1, radio', ', covers: all'))).toEqual(['met feed: protected']);
    expect(verdictsOf(rule, rotor('beam, a1, radio', ', covers: 8'))).toEqual(['met feed: protected']);
    expect(verdictsOf(rule, rotor('beam, a1, radio', ', covers: 7'))).toEqual(['not met feed: partly']);
    expect(verdictsOf(rule, rotor('beam, radio', ''))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, rotor('beam, a1, radio', ', covers: unknown'))).toEqual([
      'cannot tell feed: count unknown',
    ]);
    expect(outcomeOf(rule, site())).toBe('not applicable');
  });

  it('asks one for each building in which the line meets a box', () => {
    const between = (path: string) => `site: {name: Two, region: us, units: ft, service: panel}
buildings: {house: {}, hut: {}}
places: {loft: {where: house}}
arresters: {a: {kind: data protector, where: outside, covers: all}, b: {kind: data protector, where: outside, covers: all}}
equipment: {panel: {kind: service panel, where: house}, router: {kind: router, where: house}, camera: {kind: computer, where: hut}, mast-head: {kind: computer, where: outside}}
lines: {lan: {kind: network, path: [${path}]}}
`;
    expect(verdictsOf(rule, between('router, a, camera'))).toEqual(['not met lan: one for two']);
    expect(verdictsOf(rule, between('router, a, b, camera'))).toEqual(['met lan: protected']);
    expect(verdictsOf(rule, between('router, a, mast-head'))).toEqual(['met lan: protected']);
    // through the loft it meets nothing
    expect(verdictsOf(rule, between('mast-head, {bend: loft}, a, camera'))).toEqual(['met lan: protected']);
  });
});

/** MIL-HDBK-419A (read), NFPA 70 810.20, 820.93; no threshold. */
describe('shield-bonded-at-entry', () => {
  const rule = 'shield-bonded-at-entry';

  it('asks a bond between the last stop outside and the first inside', () => {
    expect(verdictsOf(rule, site())).toEqual(['met feed: bonded']);
    expect(verdictsOf(rule, site({ path: 'beam, {bond: mast@base}, entry, radio' }))).toEqual(['met feed: bonded']);
    expect(verdictsOf(rule, site({ path: 'beam, radio' }))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, site({ path: 'beam, radio', radio: 'where: unknown' }))).toEqual([
      'cannot tell feed: place unknown',
    ]);
    expect(outcomeOf(rule, site({ kind: 'open-wire' }))).toBe('not applicable');
  });

  it('asks it of a spare line that ends at a plug, as its place says', () => {
    const spare = (plug: string) => site({ path: `beam, {plug: j${plug}}` });
    expect(verdictsOf(rule, spare(', where: house'))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, spare(''))).toEqual(['cannot tell feed: place unknown']);
    expect(outcomeOf(rule, spare(', where: outside'))).toBe('not applicable');
    expect(verdictsOf(rule, site({ path: 'beam, entry, {plug: j, where: house}' }))).toEqual(['met feed: bonded']);
    const cores = 'arrester-on-every-feed-line';
    expect(verdictsOf(cores, spare(', where: house'))).toEqual(['not met feed: bare']);
    expect(verdictsOf(cores, site({ path: 'beam, a1, {plug: j, where: house}' }))).toEqual(['met feed: protected']);
  });

  it('of a plug on the way takes its place, and lets one without pass', () => {
    const through = (plug: string, radio = 'where: house') => site({ path: `beam, {plug: j${plug}}, radio`, radio });
    expect(verdictsOf(rule, through(''))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, through(', where: house', 'where: unknown'))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, through('', 'where: unknown'))).toEqual(['cannot tell feed: place unknown']);
    const inner = site({ path: 'beam, {plug: j, where: house}, entry, radio' });
    expect(verdictsOf(rule, inner.replace('panel, where: outside', 'panel, where: house'))).toEqual([
      'met feed: bonded',
    ]);
  });

  it('cannot tell by a panel or arrester that may not be there, and takes no loose box for a bond', () => {
    expect(verdictsOf(rule, site({ arrester: ', on: entry, present: unknown' }))).toEqual([
      'cannot tell feed: perhaps',
    ]);
    const plate = site({ path: 'beam, entry, radio' }).replace('where: outside}', 'where: outside, present: unknown}');
    expect(verdictsOf(rule, plate)).toEqual(['cannot tell feed: perhaps']);
    const box = (bond: string, header = '') =>
      site({
        path: 'beam, {bond: box}, radio',
        conductors: `c1: {from: panel, to: R}, c2: {from: entry, to: R}${bond}`,
        header,
      }).replace('equipment: {', 'equipment: {box: {kind: antenna switch, where: outside}, ');
    expect(verdictsOf(rule, box(''))).toEqual(['not met feed: floating']);
    expect(verdictsOf(rule, box('', ', incomplete: [conductors]'))).toEqual(['cannot tell feed: perhaps']);
    expect(verdictsOf(rule, box(', c3: {from: box, to: R}'))).toEqual(['met feed: bonded']);
  });

  it('asks the same of cable television from the street', () => {
    const tv = (path: string) => site({ kind: 'cable tv', path });
    expect(verdictsOf(rule, tv('street, radio'))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, tv('street, a1, radio'))).toEqual(['met feed: bonded']);
  });
});

/** NFPA 70 810.20(B) (second-hand): as near to the entry as practicable; 1 m (3 ft) indoors is ours. */
describe('discharge-unit-place', () => {
  const rule = 'discharge-unit-place';
  const indoors = (run: string) => site({ arrester: `, on: entry, where: house, from_entry: ${run}` });

  eitherSide(rule, indoors, [
    ['1 m', '1.05 m'],
    ['3.2 ft', '3.4 ft'],
  ]);

  it('is met outdoors; "outside only" is a false reading of the clause', () => {
    expect(verdictsOf(rule, site({ arrester: ', where: outside' }))).toEqual(['met a1: outside']);
    expect(verdictsOf(rule, indoors('2 ft'))).toEqual(['met a1: near the entry']);
    expect(verdictsOf(rule, indoors('20 ft'))).toEqual(['not met a1: far inside']);
    expect(findingsOf(rule, indoors('20 ft')).findings[0]!.severity).toBe('defect');
    expect(verdictsOf(rule, indoors('2 to 5 ft'))).toEqual(['cannot tell a1: run unknown']);
    expect(verdictsOf(rule, site({ arrester: '' }))).toEqual(['cannot tell a1: place unknown']);
  });

  it('prefers outdoors where nobody typed how far inside it is', () => {
    expect(verdictsOf(rule, indoors('unknown'))).toEqual(['not met a1: inside']);
    expect(findingsOf(rule, indoors('unknown')).findings[0]!.severity).toBe('advice');
  });

  it('is asked of units of antenna lines', () => {
    const mains = site({ path: 'beam, radio' }).replace('kind: gas tube', 'kind: mains protector');
    expect(outcomeOf(rule, mains)).toBe('not applicable');
  });
});

/** Common practice; 0.1 m is ours. */
describe('arrester-lead-short', () => {
  const rule = 'arrester-lead-short';
  const lead = (length: string) => site({ arrester: `, on: entry, lead: ${length}` });

  eitherSide(rule, lead, [
    ['0.1 m', '0.105 m'],
    ['3.9 in', '4.1 in'],
  ]);

  // what surge-device-lead has from IEC 60364-5-53, 534 (from memory), here as practice
  const mains = (length: string) =>
    site({ arrester: `, on: entry, lead: ${length}` }).replace('kind: gas tube', 'kind: mains protector');
  eitherSide(rule, mains, [
    ['0.5 m', '0.51 m'],
    ['19.6 in', '19.8 in'],
  ]);

  it('asks for the leads of a mains protector with the cover on, in the words of every rule on them', () => {
    const spd = site({ arrester: '', conductors: 'c1: {from: panel, to: R}, l: {from: a1, to: panel}' })
      .replace('kind: gas tube', 'kind: mains protector')
      .replace('region: us', 'region: iec');
    const asked = (text: string) =>
      [rule, 'protector-lead-volts', 'surge-device-lead'].flatMap((id) =>
        findingsOf(id, text).findings.map((f) => f.remedy),
      );
    const careful = asked(spd);
    expect([careful.length, new Set(careful).size]).toEqual([3, 1]);
    expect(careful[0]).toContain('With the cover on');
    const tube = asked(site({ arrester: '', conductors: 'c1: {from: panel, to: R}, l: {from: a1, to: panel}' }));
    expect([tube.length, new Set(tube).size]).toEqual([2, 1]);
    expect(tube[0]).toContain('Measure the lead from a1 to the bar');
  });

  it('is met by one that is bolted to a bar', () => {
    expect(verdictsOf(rule, site())).toEqual(['met a1: bolted']);
    expect(verdictsOf(rule, lead('1 ft'))).toEqual(['not met a1: long']);
    expect(verdictsOf(rule, site({ arrester: '' }))).toEqual(['cannot tell a1: lead unknown']);
    expect(verdictsOf(rule, lead('2 to 6 in'))).toEqual(['cannot tell a1: lead unknown']);
    // a lead that is typed as a conductor
    const wire = (length: string) =>
      site({
        arrester: '',
        conductors: `c1: {from: panel, to: R}, c2: {from: entry, to: R}, l: {from: a1, to: entry, length: ${length}}`,
      });
    expect(verdictsOf(rule, wire('3 in'))).toEqual(['met a1: short']);
    expect(verdictsOf(rule, wire('3 ft'))).toEqual(['not met a1: long']);
    expect(verdictsOf(rule, wire('unknown'))).toEqual(['cannot tell a1: lead unknown']);
    const none = site({ path: 'beam, radio' }).replace(/arresters: .*/, 'arresters: none');
    expect(outcomeOf(rule, none)).toBe('not applicable');
  });
});

/** NFPA 70 (2008) 810.57, means that drain static (read); no threshold. */
describe('core-static-drain', () => {
  const rule = 'core-static-drain';
  const of = (dcPath: string, arrester = ', on: entry', where = '') =>
    site({ arrester }).replace('dc_path: no', `dc_path: ${dcPath}${where}`);

  it('asks a path at direct current, by the antenna or by a bleed', () => {
    expect(verdictsOf(rule, of('yes'))).toEqual(['met feed: drained']);
    expect(verdictsOf(rule, of('no', ', on: entry, bleed: yes'))).toEqual(['met feed: drained']);
    expect(verdictsOf(rule, of('no'))).toEqual(['not met feed: floating']);
    expect(verdictsOf(rule, of('unknown'))).toEqual(['cannot tell feed: antenna unknown']);
  });

  it('asks nothing of an antenna under the roof', () => {
    expect(outcomeOf(rule, of('no', ', on: entry', ', where: house'))).toBe('not applicable');
  });
});

/** Common practice, no source; that 0.1 m is bridged is reported. */
describe('spare-and-disconnected-lines', () => {
  const rule = 'spare-and-disconnected-lines';
  const pulled = (more: string) =>
    site({ path: 'beam, a1, {plug: j}, radio', more: `states: {storm: {open: [{at: j${more}}]}}\n` });

  it('asks a grounded receptacle', () => {
    expect(verdictsOf(rule, pulled(', end: grounded'))).toEqual(['met feed: grounded']);
    expect(verdictsOf(rule, pulled(', end: loose'))).toEqual(['not met feed: loose']);
    expect(verdictsOf(rule, pulled(''))).toEqual(['cannot tell feed: nobody said']);
  });

  it('finds a gap that has been bridged, either side of 0.1 m (3.94 in)', () => {
    expect(verdictsOf(rule, pulled(', gap: 0.09 m'))).toEqual(['not met feed: bridged']);
    expect(verdictsOf(rule, pulled(', gap: 0.11 m'))).toEqual(['cannot tell feed: nobody said']);
    expect(verdictsOf(rule, pulled(', gap: 3.8 in'))).toEqual(['not met feed: bridged']);
    expect(verdictsOf(rule, pulled(', gap: 4.1 in'))).toEqual(['cannot tell feed: nobody said']);
  });

  // a gap of more than 0.1 m would not clear it
  it('of an end that hangs loose says that, whatever the gap', () => {
    for (const gap of ['0.05 m', '3 ft']) {
      expect(verdictsOf(rule, pulled(`, gap: ${gap}, end: loose`))).toEqual(['not met feed: loose']);
      expect(findingsOf(rule, pulled(`, gap: ${gap}, end: loose`)).findings[0]!.measured).toBeNull();
    }
  });

  it('is asked where a state pulls something', () => {
    expect(outcomeOf(rule, site())).toBe('not applicable');
  });
});

/** MIL-HDBK-419A, bond at the turn (read); 1 m (3.28 ft) above the ground is ours. */
describe('line-goes-down-before-in', () => {
  const rule = 'line-goes-down-before-in';
  const exit = (height: string) => site({ path: `beam, {bond: mast@${height}}, a1, radio` });

  eitherSide(rule, exit, [
    ['1 m', '1.05 m'],
    ['3.2 ft', '3.4 ft'],
  ]);

  it('asks the last point at the mast', () => {
    expect(verdictsOf(rule, exit('base'))).toEqual(['met feed: low']);
    expect(verdictsOf(rule, exit('20 ft'))).toEqual(['not met feed: high']);
    expect(verdictsOf(rule, site())).toEqual(['cannot tell feed: exit unknown']);
    // the foot of a mast on a roof is no place near the ground
    const roof = exit('base').replace('kind: mast,', 'kind: roof mast,');
    expect(outcomeOf(rule, roof)).toBe('not applicable');
    const wood = exit('20 ft').replace('kind: mast,', 'kind: wood pole,');
    expect(outcomeOf(rule, wood)).toBe('not applicable');
    const tree = site().replace('kind: mast, height: 40 ft, sections: one piece', 'kind: tree');
    expect(outcomeOf(rule, tree)).toBe('not applicable');
  });
});

/** NFPA 70 230.67 (from memory); no threshold. */
describe('service-surge-protector', () => {
  const rule = 'service-surge-protector';
  const spd = (header = '') => site({ header }).replace('a1: {', 'spd: {kind: mains protector, on: panel}, a1: {');

  it('asks one at the service', () => {
    expect(verdictsOf(rule, spd())).toEqual(['met panel: there']);
    expect(verdictsOf(rule, site())).toEqual(['not met panel: none there']);
    expect(verdictsOf(rule, site({ header: ', incomplete: [arresters]' }))).toEqual(['cannot tell panel: not looked']);
    expect(outcomeOf(rule, site({ header: ', without: [mains]' }))).toBe('not applicable');
    expect(outcomeOf(rule, site().replace('service: panel', 'service: none'))).toBe('not applicable');
  });

  it('one at a room or a circuit is not at the service, and one of unknown place may be', () => {
    const at = (place: string) =>
      verdictsOf(rule, spd().replace('mains protector, on: panel', `mains protector${place}`));
    expect(at(', on: entry')).toEqual(['not met panel: none there']);
    expect(at(', on: radio')).toEqual(['not met panel: none there']);
    expect(at('')).toEqual(['cannot tell panel: place unknown']);
    expect(at(', on: panel, present: unknown')).toEqual(['cannot tell panel: place unknown']);
    // the supply passes it before any panel
    const supply = `${spd().replace(', on: panel', '')}`.replace(
      /\nlines: *\{/,
      '\nlines: {supply: {kind: mains, path: [street, spd, panel]}, ',
    );
    expect(verdictsOf(rule, supply)).toEqual(['met panel: there']);
  });
});

everyOutcome('panel-tied-to-service');
everyOutcome('arrester-bonded');
everyOutcome('arrester-on-every-feed-line');
everyOutcome('arrester-on-every-control-line');
everyOutcome('shield-bonded-at-entry');
everyOutcome('discharge-unit-place');
everyOutcome('arrester-lead-short');
everyOutcome('core-static-drain');
everyOutcome('spare-and-disconnected-lines');
everyOutcome('line-goes-down-before-in');
everyOutcome('service-surge-protector');
