import { describe, expect, it } from 'vitest';
import { changeText, newChanger, type SiteChange } from '../../src/site/change.ts';

const text = `site: {name: Small, region: us, units: ft, service: unknown}
electrodes:
  E1: {kind: rod, length: 8 ft}  # at the corner
supports:
  mast: {kind: mast, height: 25 ft}
bars:
  entry: {kind: entry panel}
equipment:
  radio: {kind: transceiver}
lines:
  line1: {kind: coax, path: [mast@top, entry, radio], length: 60 ft}
conductors:
  c1: {from: mast@base, to: E1, wire: 10 AWG copper}
  # the next one is new
  c2: {from: entry, to: E1, wire: 6 AWG copper, joints: [bolted lug, clamp1]}   # by the wall

joints:
  clamp1: {kind: acorn clamp, on: E1}
`;

const wire = (id: string): SiteChange => ({
  is: 'add',
  section: 'conductors',
  id,
  fields: { from: 'entry', to: 'E1', wire: '6 AWG copper' },
});
const changes: readonly SiteChange[] = [
  wire('n1'),
  { is: 'set', section: 'conductors', id: 'c2', field: 'wire', value: '4 AWG copper' },
  wire('n2'),
  { is: 'add', section: 'electrodes', id: 'new-rod', fields: { kind: 'rod', length: '8 ft' } },
  { is: 'set', section: 'joints', id: 'clamp1', field: 'listed', value: 'yes' },
  wire('n3'),
  { is: 'set', section: 'lines', id: 'line1', field: 'note', value: 'looked at' },
];

/** Each change by itself on what the one before left. */
function oneAfterAnother(many: readonly SiteChange[]): string {
  return many.reduce((now, change) => {
    const next = changeText(now, [change]);
    if ('problem' in next) throw new Error(next.problem.key);
    return next.text;
  }, text);
}

describe('several changes in one go', () => {
  it('write the text that they write one after another, in any order', () => {
    for (const order of ['0123456', '6420135', '210', '53', '40216']) {
      const many = [...order].map((i) => changes[Number(i)]!);
      expect(changeText(text, many)).toEqual({ text: oneAfterAnother(many) });
    }
  });

  it('that stand on each other are made one after another', () => {
    const many: readonly SiteChange[] = [
      wire('n1'),
      { is: 'set', section: 'conductors', id: 'n1', field: 'length', value: '5 ft' },
    ];
    expect(changeText(text, many)).toEqual({ text: oneAfterAnother(many) });
  });

  it('name what one of them cannot find', () => {
    const many: readonly SiteChange[] = [
      wire('n1'),
      { is: 'set', section: 'conductors', id: 'nowhere', field: 'length', value: '5 ft' },
    ];
    expect(changeText(text, many)).toMatchObject({ problem: { key: 'change-not-there' } });
  });

  it('come out the same whatever was changed before', () => {
    const change = newChanger('');
    const first = changes.map((c) => change(text, [c]));
    const again = changes.map((c) => change(text, [c]));
    expect(again.map((c) => ('text' in c ? c.text : ''))).toEqual(first.map((c) => ('text' in c ? c.text : '')));
    expect(first.map((c) => ('text' in c ? c.text : ''))).toEqual(changes.map((c) => oneAfterAnother([c])));
  });
});
