import { type Metal, metalNames, nearMetal, readMetal } from '../../materials/metals.ts';
import { nearSoil, readSoil, soilNames } from '../../materials/soils.ts';
import { readWire, type Wire } from '../../materials/wire.ts';
import { refuse } from '../reading/report.ts';
import { type FieldType, textOf } from './field.ts';

/** A metal by name. */
export const metal: FieldType<Metal> = {
  schema: { type: 'string', examples: metalNames },
  expects: 'a metal such as copper or galvanised steel',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'a metal such as copper or galvanised steel');
    if (typed === null) return null;
    const values = { text: typed, known: metalNames.slice(0, 8).join(', ') };
    return readMetal(typed) ?? refuse(spot, node.at, 'metal-unknown', values, nearMetal(typed));
  },
};

/** A metal, or `none` where the thing is not of metal. */
export const metalOrNone: FieldType<Metal | 'none'> = {
  ...metal,
  schema: { type: 'string', examples: [...metalNames, 'none'] },
  expects: 'a metal, or none where it is not of metal',
  read: (node, spot) => (node.is === 'text' && node.text.trim() === 'none' ? 'none' : metal.read(node, spot)),
};

/** A wire, strap, tube, braid or conduit. */
export const wire: FieldType<Wire> = {
  schema: { type: 'string', examples: ['6 AWG copper', '16 mm2 copper', 'strap 3 in x 0.022 in copper'] },
  expects: 'a wire such as 6 AWG copper or 16 mm2 copper',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'a wire such as 6 AWG copper or 16 mm2 copper');
    if (typed === null) return null;
    const read = readWire(typed);
    return read.ok ? read.wire : refuse(spot, node.at, read.code, read.values, read.values.near || null);
  },
};

/** A kind of soil by name. */
export const soilType: FieldType<string> = {
  schema: { type: 'string', examples: soilNames },
  expects: 'a kind of soil such as clay or dry sand',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'a kind of soil such as clay or dry sand');
    if (typed === null) return null;
    const values = { text: typed, known: soilNames.slice(0, 12).join(', ') };
    return readSoil(typed)?.name ?? refuse(spot, node.at, 'soil-unknown', values, nearSoil(typed));
  },
};
