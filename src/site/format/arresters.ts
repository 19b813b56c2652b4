import { below, refuse } from '../reading/report.ts';
import { sayNode } from '../reading/tree.ts';
import type { PointRef } from '../site.ts';
import { mountJoint, thingSections } from './common-fields.ts';
import { type FieldType, field } from './field.ts';
import { point, unknownPoint } from './points.ts';
import { clamping, quantity } from './quantity.ts';
import { readValue } from './read-value.ts';
import { partFormat } from './section.ts';
import { answer, count, oneOf, refuseText } from './words.ts';

const wires = count(1, 1000);

const covers: FieldType<number | 'all'> = {
  schema: { anyOf: [{ const: 'all' }, { type: 'integer', minimum: 1 }] },
  expects: 'all, or how many wires it covers',
  read: (node, spot) => {
    if (node.is === 'text' && node.text.trim() === 'all') return 'all';
    if (node.is === 'text' && /^\d/.test(node.text.trim())) return wires.read(node, spot);
    return refuseText(node, spot, 'all, or how many wires it covers');
  },
};

/** Two points. */
export const pair: FieldType<readonly [PointRef, PointRef]> = {
  schema: { type: 'array', minItems: 2, maxItems: 2, items: { type: 'string' } },
  expects: 'two points, such as [entry, main-panel]',
  read: (node, spot) => {
    if (node.is !== 'list') return refuse(spot, node.at, 'not-a-list', { found: sayNode(node), expects: pair.expects });
    const [a, b] = node.items.map((item, i) => readValue(end, item, below(spot, i + 1)) ?? unknownPoint);
    if (node.items.length === 2) return [a!, b!];
    return refuse(spot, node.at, 'not-two', { count: node.items.length });
  },
};
const end = point([...thingSections, 'guys'], true);

export const arresters = partFormat({
  section: 'arresters',
  says: 'Protectors and discharge units.',
  kindsAre: 'closed',
  kinds: {
    'gas tube': 'A gas discharge tube.',
    'quarter-wave stub': 'A shorted stub across a coax line.',
    'dc-blocked': 'A coax protector that blocks direct current.',
    mov: 'A metal-oxide varistor.',
    silicon: 'A silicon clamp.',
    'spark gap': 'An air gap.',
    'mains protector': 'A surge protector of the mains.',
    'telephone protector': 'The protector of a telephone line.',
    'data protector': 'A protector of a network or data line.',
    'control protector': 'A protector of rotator, switch or other control wires.',
  },
  fields: {
    sparkover: field(quantity('voltage', { positive: true }), 'Voltage at which it fires.'),
    rated_power: field(quantity('power', { positive: true }), 'Power that it is rated for.'),
    arc: field(quantity('voltage', { positive: true }), 'Voltage across it while it conducts.'),
    clamping: field(clamping, 'Voltage that it lets through at a current, such as 400 V at 5 kA.'),
    band: field(quantity('frequency', { positive: true }), 'Frequency or band of a stub.'),
    bleed: field(answer, 'Whether a resistor or choke drains static through it.'),
    lead: field(quantity('length'), 'Length of its ground lead.'),
    line_lead: field(quantity('length'), 'Length of its lead on the side of the line.'),
    from_entry: field(
      quantity('length'),
      'How far along its line it stands from where the line goes through the wall, for one indoors.',
    ),
    near_fuel: field(answer, 'Whether fuel, hay, thatch or other things that burn easily are close to it.'),
    listed: field(answer, 'Whether it is listed (tested) for this use.'),
    position: field(oneOf(['series', 'shunt']), 'Whether the line goes through it or past it.'),
    covers: field(covers, 'How many wires of its line it protects, or all.'),
    between: field(pair, 'The two points that it joins when it conducts.'),
    test_class: field(oneOf(['I', 'II', 'III']), 'Class that a protector of the mains was tested to.', [
      'mains protector',
    ]),
    joint: mountJoint,
  },
});
