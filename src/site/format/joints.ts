import { joints as jointTable } from '../../materials/joints.ts';
import { field } from './field.ts';
import { conditionWords, jointFields } from './joint-uses.ts';
import { partFormat } from './section.ts';
import { oneOf } from './words.ts';

const kinds: Readonly<Record<string, string>> = {
  'exothermic weld': 'A weld by a thermite mould.',
  'irreversible crimp': 'A crimp by a press, not to be undone.',
  brazed: 'A brazed joint.',
  'bolted lug': 'A lug under a bolt.',
  'set-screw lug': 'A lug with a screw on the wire.',
  'rod clamp': 'A clamp for rods.',
  'acorn clamp': 'A clamp with one screw for rods.',
  'pipe clamp': 'A clamp for pipes and tubes.',
  'hose clamp': 'A worm-drive band.',
  'split bolt': 'A split bolt on two wires.',
  'U-bolt': 'A U-bolt.',
  solder: 'Soft solder alone.',
  twist: 'Wires twisted together.',
  'sheet-metal screw': 'A screw in sheet metal.',
  welded: 'An ordinary weld.',
  none: 'One piece of metal.',
};

export const joints = partFormat({
  section: 'joints',
  says: 'Clamps that have a name: those that hold several wires, or of which more is known than the kind.',
  kindsAre: 'joint',
  kinds: Object.fromEntries(jointTable.map(({ name }) => [name, kinds[name] ?? name])),
  fields: {
    ...jointFields,
    condition: field(oneOf(conditionWords), 'What it looks like: sound, loose, corroded or open.'),
  },
});
