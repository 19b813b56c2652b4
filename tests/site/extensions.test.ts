import { describe, expect, it } from 'vitest';
import { isMetal } from '../../src/bonding/support-metal.ts';
import { siteOf } from './read-text.ts';

const ft = 0.3048;

describe('fields that say less than all', () => {
  it('a buried conductor may have no depth', () => {
    const { conductors } = siteOf(
      'conductors:\n  a: {buried: yes}\n  b: {buried: no}\n  c: {buried: 2 ft}\n  d: {buried: unknown}\n  e: {}\n',
    );
    const depth = { low: 2 * ft, high: 2 * ft };
    expect(conductors.map((c) => c.buriedM)).toEqual(['yes', 'no', depth, null, null]);
  });

  it('a support without a height behind its name is met at a height nobody knows', () => {
    const { conductors } = siteOf(
      'supports:\n  mast: {kind: mast, height: 25 ft}\nconductors:\n  a: {from: mast}\n  b: {from: mast@base}\n  c: {from: mast@top}\n  d: {from: mast@9 ft}\n',
    );
    const [a, b, c, d] = conductors.map(({ from }) => from);
    expect(a).toMatchObject({ part: 'mast', atM: null, mark: null });
    expect(b).toMatchObject({ part: 'mast', atM: null, mark: 'base' });
    expect(c).toMatchObject({ part: 'mast', atM: null, mark: 'top' });
    expect(d).toMatchObject({ part: 'mast', mark: null });
    expect(d!.atM!.low).toBeCloseTo(9 * ft, 12);
  });

  it('a tower whose metal is not typed is of metal all the same, and `none` is something else', () => {
    const { supports } = siteOf(
      'supports:\n  a: {kind: tower}\n  b: {kind: tower, metal: none}\n  c: {kind: tower, metal: galvanised steel}\n',
    );
    expect(supports.map(isMetal)).toEqual(['yes', 'no', 'yes']);
    expect(supports.map((s) => s.metal)).toEqual([null, 'none', expect.objectContaining({ name: 'galvanised steel' })]);
  });

  it('rods may be uncounted', () => {
    const { electrodes } = siteOf(
      'electrodes:\n  a: {kind: rods}\n  b: {kind: rods, count: unknown}\n  c: {kind: rods, count: 4}\n  d: {kind: rod}\n',
    );
    expect(electrodes.map((e) => [e.members, e.count])).toEqual([
      [null, 1],
      [null, 1],
      [4, 1],
      [1, 1],
    ]);
  });

  it('a layer of soil may have a thickness alone, and a soil no type', () => {
    const layers = siteOf('soil: {layers: [{thickness: 5 ft}, {resistivity: 60 ohm m}]}\n').soil!.layers;
    expect(layers[0]!.resistivityOhmM).toBeNull();
    expect(layers[0]!.thicknessM!.low).toBeCloseTo(5 * ft, 12);
    expect(layers[1]).toEqual({ resistivityOhmM: { low: 60, high: 60 }, thicknessM: null });
    const soil = siteOf('soil: {type: unknown}\n');
    expect(soil.soil).toMatchObject({ type: null, layers: [] });
    expect(soil.sections.soil).toBe('listed');
    expect(siteOf('soil: unknown\n').sections.soil).toBe('missing');
  });

  it('how many are alike may be unknown', () => {
    const { equipment } = siteOf(
      'equipment:\n  a: {kind: computer, count: unknown}\n  b: {kind: computer, count: 3}\n',
    );
    expect(equipment.map((e) => e.count)).toEqual([1, 3]);
  });

  it('a distance to a neighbour may be a bound', () => {
    const { metalwork } = siteOf(
      'bars:\n  bar: {kind: entry panel}\nmetalwork:\n  foil: {kind: wall foil, near: [{part: bar, distance: under 5 ft}]}\n  pipe: {kind: gas pipe, near: [bar]}\n',
    );
    expect(metalwork[0]!.near).toEqual([{ part: 'bar', distanceM: { low: 0, high: 5 * ft } }]);
    expect(metalwork[1]!.near).toEqual([{ part: 'bar', distanceM: null }]);
  });
});

describe('sections and lists that are empty or not known', () => {
  it('a section may say that there are none, or that nobody has looked', () => {
    const { sections } = siteOf('conductors: none\nbars: unknown\narresters:\n');
    expect(sections.conductors).toBe('none');
    expect(sections.bars).toBe('missing');
    expect(sections.arresters).toBe('missing');
    expect(sections.lines).toBe('missing');
  });

  it('a joint in the list of a conductor may be unknown', () => {
    const [a, b, c] = siteOf(
      'conductors:\n  a: {joints: [unknown, solder]}\n  b: {joints: none}\n  c: {joints: unknown}\n',
    ).conductors;
    expect([a!.fromJoint.kind, a!.toJoint.kind, a!.onePiece]).toEqual([null, 'solder', false]);
    expect(b!.onePiece).toBe(true);
    expect([c!.fromJoint.kind, c!.toJoint.kind, c!.onePiece]).toEqual([null, null, false]);
  });

  it('a part may be all blank', () => {
    const { electrodes, joints } = siteOf('electrodes:\n  a:\n  b: unknown\n  c: {}\njoints:\n  k: {kind: unknown}\n');
    expect(electrodes.map((e) => e.kind)).toEqual(['unknown', 'unknown', 'unknown']);
    expect(joints[0]!.kind).toBe('unknown');
  });
});

describe('fields that were added', () => {
  it('metalwork has a clearance', () => {
    const [sheet] = siteOf('metalwork:\n  sheet: {kind: roof sheet, clearance: 2 in}\n').metalwork;
    expect(sheet!.clearanceM!.low).toBeCloseTo(0.0508, 12);
  });

  it('a joint has a shim, in its section and where a conductor lands', () => {
    const site = siteOf(
      'joints:\n  k: {kind: pipe clamp, shim: stainless steel}\nconductors:\n  c: {joints: [k, {kind: pipe clamp, shim: stainless steel}]}\n',
    );
    expect(site.joints[0]!.shim?.name).toBe('stainless steel');
    expect(site.conductors[0]!.fromJoint).toMatchObject({ named: 'k', shim: null });
    expect(site.conductors[0]!.toJoint.shim?.name).toBe('stainless steel');
  });

  it('a switch says what it does with ports not in use', () => {
    const { equipment } = siteOf(
      'equipment:\n  a: {kind: coax switch, unused_ports: grounded}\n  b: {kind: coax switch, unused_ports: unknown}\n',
    );
    expect(equipment.map((e) => e.unusedPorts)).toEqual(['grounded', null]);
  });

  it('a run may lie in a conduit of metal', () => {
    const site = siteOf(
      'lines:\n  l: {kind: control, enclosure: metal conduit}\nconductors:\n  c: {enclosure: plastic pipe}\n',
    );
    expect(site.lines[0]!.enclosure).toBe('metal conduit');
    expect(site.conductors[0]!.enclosure).toBe('plastic pipe');
  });
});
