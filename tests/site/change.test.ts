import { describe, expect, it } from 'vitest';
import { type ChangedText, changeText, type SiteChange } from '../../src/site/change.ts';
import { readSite } from '../../src/site/read-site.ts';

function changed(text: string, ...changes: readonly SiteChange[]): string {
  const result: ChangedText = changeText(text, changes);
  if ('problem' in result) throw new Error(JSON.stringify(result.problem));
  return result.text;
}

function refusal(text: string, ...changes: readonly SiteChange[]): string {
  const result = changeText(text, changes);
  return 'problem' in result ? result.problem.key : `accepted:\n${result.text}`;
}

const set = (
  section: 'electrodes' | 'bars' | 'places' | 'conductors',
  id: string,
  field: string,
  value: never | string,
) => ({ is: 'set', section, id, field, value }) as const;
const out = (section: 'electrodes' | 'bars', id: string, field: string) =>
  ({ is: 'set', section, id, field, value: null }) as const;
const rod = { kind: 'rod', length: '8 ft' };

const base = `# my station
site: {name: Hill, units: ft}   # a name

electrodes:
  # by the meter
  E1: {kind: rod, length: 8 ft}   # seen

  E2:
    kind: rods      # three
    count: 3
    photo:
      - a.jpg       # front
      - b.jpg
    note: |
      first line
      second line

  # the last
bars: none      # I looked
arresters:
`;

describe('a field', () => {
  it('in braces is set where it stands', () => {
    expect(changed(base, set('electrodes', 'E1', 'length', '10 ft'))).toBe(base.replace('8 ft', '10 ft'));
  });

  it('in braces is added behind the last', () => {
    const text = base.replace('8 ft}', '8 ft, diameter: 5/8 in}');
    expect(changed(base, set('electrodes', 'E1', 'diameter', '5/8 in'))).toBe(text);
  });

  it('on a line of its own keeps the comment behind it', () => {
    expect(changed(base, set('electrodes', 'E2', 'kind', 'rod'))).toBe(base.replace('kind: rods ', 'kind: rod '));
  });

  it('is added on a line of its own behind the last, a text over several lines too', () => {
    const text = base.replace('second line\n', 'second line\n    length: 8 ft\n');
    expect(changed(base, set('electrodes', 'E2', 'length', '8 ft'))).toBe(text);
  });

  it('that is a list by dashes goes on one line', () => {
    const text = base.replace('photo:\n      - a.jpg       # front\n      - b.jpg\n', 'photo: c.jpg\n');
    expect(changed(base, set('electrodes', 'E2', 'photo', 'c.jpg'))).toBe(text);
  });

  it('that is a text over several lines goes on one line', () => {
    const text = base.replace('note: |\n      first line\n      second line\n', 'note: short\n');
    expect(changed(base, set('electrodes', 'E2', 'note', 'short'))).toBe(text);
  });

  it('is taken out with its comma, or with its lines', () => {
    expect(changed(base, out('electrodes', 'E1', 'kind'))).toBe(base.replace('kind: rod, length', 'length'));
    expect(changed(base, out('electrodes', 'E1', 'length'))).toBe(base.replace(', length: 8 ft', ''));
    expect(changed(base, out('electrodes', 'E2', 'count'))).toBe(base.replace('    count: 3\n', ''));
    const photos = '    photo:\n      - a.jpg       # front\n      - b.jpg\n';
    expect(changed(base, out('electrodes', 'E2', 'photo'))).toBe(base.replace(photos, ''));
  });

  it('of the site or the soil is set too, and a section that is missing is begun', () => {
    const units: SiteChange = { is: 'set', section: 'site', id: null, field: 'units', value: 'm' };
    expect(changed(base, units)).toBe(base.replace('units: ft', 'units: m'));
    const soil: SiteChange = { is: 'set', section: 'soil', id: null, field: 'type', value: 'clay' };
    expect(changed(base, soil)).toBe(`${base}\nsoil:\n  type: clay\n`);
  });

  it('of a part of which nothing was typed', () => {
    const text = 'electrodes:\n  E1:   # green\n  E2: unknown\n  E3: ~\nbars: {B1, B2: }\n';
    expect(changed(text, set('electrodes', 'E1', 'kind', 'rod'))).toBe(text.replace('E1:', 'E1: {kind: rod}'));
    expect(changed(text, set('electrodes', 'E2', 'kind', 'rod'))).toBe(text.replace('unknown', '{kind: rod}'));
    expect(changed(text, set('electrodes', 'E3', 'kind', 'rod'))).toBe(text.replace('~', '{kind: rod}'));
    expect(changed(text, set('bars', 'B1', 'note', 'x'))).toBe(text.replace('B1', 'B1: {note: x}'));
    expect(changed(text, set('bars', 'B2', 'note', 'x'))).toBe(text.replace('B2:', 'B2: {note: x}'));
  });

  it('beside a position stands with it', () => {
    const text = 'site: {units: m}\nplaces:\n  desk: [1, 2]   # by the door\n  door: {from: desk, go: 2 m north}\n';
    expect(changed(text, set('places', 'desk', 'note', 'x'))).toBe(text.replace('[1, 2]', '{at: [1, 2], note: x}'));
    expect(changed(text, set('places', 'desk', 'at', 'unknown'))).toBe(text.replace('[1, 2]', 'unknown'));
    const door = text.replace('{from: desk, go: 2 m north}', '{at: {from: desk, go: 2 m north}, note: x}');
    expect(changed(text, set('places', 'door', 'note', 'x'))).toBe(door);
  });

  it('that holds a list or group is written on one line, with quotes where they are needed', () => {
    const value = [
      { part: 'E2', distance: '4 in' },
      { part: 'E1', distance: 3 },
    ];
    const text = changed(base, { is: 'set', section: 'electrodes', id: 'E1', field: 'near', value });
    expect(text).toContain('near: [{part: E2, distance: 4 in}, {part: E1, distance: 3}]}   # seen');
    expect(changed(base, set('electrodes', 'E1', 'note', 'loose, seen: #2'))).toContain(
      'note: "loose, seen: #2"}   # seen',
    );
  });
});

describe('a part', () => {
  const add: SiteChange = { is: 'add', section: 'electrodes', id: 'E3', fields: rod };

  it('is added behind the last one', () => {
    const text = base.replace('second line\n', 'second line\n  E3: {kind: rod, length: 8 ft}\n');
    expect(changed(base, add)).toBe(text);
  });

  it('is added in braces', () => {
    expect(changed('electrodes: {E1: {kind: rod}}\n', add)).toBe(
      'electrodes: {E1: {kind: rod}, E3: {kind: rod, length: 8 ft}}\n',
    );
    expect(changed('electrodes: {}', add)).toBe('electrodes: {E3: {kind: rod, length: 8 ft}}');
  });

  it('is added to a section that said none or nothing, whose comment stays', () => {
    const bar: SiteChange = { is: 'add', section: 'bars', id: 'B1', fields: { kind: 'tower bar' } };
    expect(changed(base, bar)).toBe(
      base.replace('bars: none ', 'bars: ').replace('looked\n', 'looked\n  B1: {kind: tower bar}\n'),
    );
    const a1: SiteChange = { is: 'add', section: 'arresters', id: 'a1', fields: { kind: 'gas tube' } };
    expect(changed(base, a1)).toBe(`${base}  a1: {kind: gas tube}\n`);
  });

  it('is added to a section that is missing', () => {
    const mast: SiteChange = { is: 'add', section: 'supports', id: 'mast', fields: { kind: 'mast' } };
    expect(changed(base, mast)).toBe(`${base}\nsupports:\n  mast: {kind: mast}\n`);
    expect(changed('electrodes: {}', mast)).toBe('electrodes: {}\n\nsupports:\n  mast: {kind: mast}\n');
    expect(changed('{electrodes: {}}', mast)).toBe('{electrodes: {}, supports: {mast: {kind: mast}}}');
    expect(changed('bars:\n    B1:\n...\n', mast)).toBe('bars:\n    B1:\nsupports:\n    mast: {kind: mast}\n...\n');
  });

  it('is removed with its lines; the comment above stays', () => {
    const remove = (id: string): SiteChange => ({ is: 'remove', section: 'electrodes', id });
    expect(changed(base, remove('E1'))).toBe(base.replace('  E1: {kind: rod, length: 8 ft}   # seen\n', ''));
    const e2 = base.slice(base.indexOf('  E2:'), base.indexOf('\n  # the last'));
    expect(changed(base, remove('E2'))).toBe(base.replace(e2, ''));
    expect(changed(base, remove('E1'), remove('E2'))).toBe(
      base
        .replace('electrodes:', 'electrodes: none')
        .replace('  E1: {kind: rod, length: 8 ft}   # seen\n', '')
        .replace(e2, ''),
    );
  });

  it('that is the last in braces leaves none', () => {
    expect(changed('bars: {B1: {}}   # x\n', { is: 'remove', section: 'bars', id: 'B1' })).toBe('bars: none   # x\n');
  });

  it('in braces over several lines goes with its line', () => {
    const text = 'electrodes: {\n  E1: {kind: rod}, # one\n  E2: {kind: rod},\n  E3: {kind: rod}\n}\n';
    const remove = (id: string): SiteChange => ({ is: 'remove', section: 'electrodes', id });
    expect(changed(text, remove('E1'))).toBe(text.replace('E1: {kind: rod}, ', ''));
    expect(changed(text, remove('E2'))).toBe(text.replace('  E2: {kind: rod},\n', ''));
    expect(changed(text, remove('E3'))).toBe(text.replace(',\n  E3: {kind: rod}', ''));
  });
});

describe('the file', () => {
  const add: SiteChange = { is: 'add', section: 'electrodes', id: 'E3', fields: rod };

  it('keeps its line ends, and a last line without one', () => {
    const dos = base.replaceAll('\n', '\r\n');
    for (const change of [add, set('electrodes', 'E2', 'photo', 'c.jpg'), out('electrodes', 'E2', 'note')])
      expect(changed(dos, change)).toBe(changed(base, change).replaceAll('\n', '\r\n'));
    expect(changed('electrodes:\r\n  E1: {kind: rod}', add)).toBe(
      'electrodes:\r\n  E1: {kind: rod}\r\n  E3: {kind: rod, length: 8 ft}',
    );
  });

  it('keeps a byte order mark', () => {
    expect(changed('\uFEFFelectrodes: {}\n', add)).toBe('\uFEFFelectrodes: {E3: {kind: rod, length: 8 ft}}\n');
  });

  it('that is JSON stays JSON', () => {
    const text = JSON.stringify(
      { site: { name: 'x' }, bars: { B1: { kind: 'tower bar' } }, arresters: 'none' },
      null,
      2,
    );
    const json = changed(
      text,
      add,
      { is: 'add', section: 'arresters', id: 'a1', fields: { kind: 'gas tube' } },
      set('bars', 'B1', 'note', 'by "me"'),
      { is: 'set', section: 'site', id: null, field: 'revision', value: 3 },
      { is: 'remove', section: 'bars', id: 'B1' },
    );
    expect(JSON.parse(json)).toEqual({
      site: { name: 'x', revision: 3 },
      bars: 'none',
      arresters: { a1: { kind: 'gas tube' } },
      electrodes: { E3: rod },
    });
  });
});

describe('a change is refused', () => {
  const text = 'electrodes:\n  E1: &rod {kind: rod, length: &l 8 ft}\n  E2: *rod\n  E3: {kind: rod, length: *l}\n';

  it('where it would reach further than it says', () => {
    expect(refusal(text, set('electrodes', 'E1', 'length', '9 ft'))).toBe('change-reaches-further');
    expect(refusal(text, set('electrodes', 'E2', 'length', '9 ft'))).toBe('change-reaches-further');
    expect(refusal(text, { is: 'remove', section: 'electrodes', id: 'E1' })).toBe('change-reaches-further');
    expect(changed(text, set('electrodes', 'E3', 'length', '9 ft'))).toBe(text.replace('*l', '9 ft'));
  });

  it('where there is nothing of that name, or something already', () => {
    expect(refusal(text, out('electrodes', 'E1', 'diameter'))).toBe('change-not-there');
    expect(refusal(text, set('electrodes', 'E9', 'length', '9 ft'))).toBe('change-not-there');
    expect(refusal(text, set('bars', 'B1', 'note', 'x'))).toBe('change-not-there');
    expect(refusal(text, { is: 'remove', section: 'bars', id: 'B1' })).toBe('change-not-there');
    expect(refusal(text, { is: 'add', section: 'electrodes', id: 'E1', fields: rod })).toBe('change-id-there');
  });

  it('where the text would have to be laid out anew', () => {
    expect(refusal('? bars\n: ? B1\n  : kind: tower bar\n', out('bars', 'B1', 'kind'))).toBe('change-layout');
    expect(refusal('places:\n  desk:\n    - 1 m\n    - 2 m\n', set('places', 'desk', 'note', 'x'))).toBe(
      'change-layout',
    );
  });

  it('where the site could not be read before, or not after', () => {
    expect(refusal('bars: {B1: ', { is: 'remove', section: 'bars', id: 'B1' })).toBe('bracket-not-closed');
    expect(refusal(base, set('electrodes', 'E1', 'length', '8'))).toContain('accepted');
    expect(refusal(base, set('electrodes', 'E1', 'diameter', '8'))).toBe('unit-missing');
    // nothing is nothing in any unit, where nothing can be
    expect(refusal(base, set('electrodes', 'E1', 'top', '0'))).toContain('accepted');
    expect(refusal(base, set('electrodes', 'E1', 'top', '2'))).toBe('unit-missing');
    expect(refusal(base, set('electrodes', 'E1', 'diameter', '0'))).toBe('unit-missing');
    expect(refusal(base, set('electrodes', 'E1', 'colour', 'green'))).toBe('key-unknown');
    expect(refusal(base, { is: 'add', section: 'electrodes', id: 'my rod', fields: rod })).toBe('id-letters');
    const tied = `${base}conductors:\n  c1: {from: E1, to: E2}\n`;
    expect(refusal(tied, { is: 'remove', section: 'electrodes', id: 'E1' })).toBe('id-unknown');
  });

  it('with the place of its section and the path of what was meant', () => {
    const result = changeText(base, [set('electrodes', 'E9', 'length', '9 ft')]);
    expect(result).toMatchObject({ problem: { path: 'electrodes.E9.length', source: { line: 4, column: 1 } } });
  });
});

it('several changes are made one after the other', () => {
  const text = changed(
    base,
    { is: 'add', section: 'bars', id: 'B1', fields: { kind: 'tower bar' } },
    { is: 'add', section: 'conductors', id: 'c1', fields: { from: 'B1', to: 'E1', wire: '6 AWG copper' } },
    set('conductors', 'c1', 'length', 'about 5 ft'),
  );
  const { site } = readSite(text, 'x');
  expect(site?.conductors.map((c) => c.typed)).toEqual([
    { from: 'B1', to: 'E1', wire: '6 AWG copper', length: 'about 5 ft' },
  ]);
});
