import { expect, test } from 'vitest';
import { readWire } from '../../src/materials/wire.ts';

test.each(['6 AWG', '6 gauge', '6 gage', '6 ga', '#6', 'AWG 6', 'no. 6'])(
  '%s alone is that gauge of a metal that nobody named',
  (text) => {
    const read = readWire(text);
    expect(read).toMatchObject({ ok: true, wire: { awg: '6 AWG', metal: null } });
  },
);

test('millimetres alone are neither section nor diameter', () => {
  expect(readWire('6 mm')).toMatchObject({ ok: false, code: 'wire-unreadable' });
  expect(readWire('6 mm2')).toMatchObject({ ok: true, wire: { form: 'round', areaM2: { low: 6e-6, high: 6e-6 } } });
  expect(readWire('round 6 mm')).toMatchObject({ ok: true, wire: { diameterM: { low: 6e-3, high: 6e-3 } } });
});
