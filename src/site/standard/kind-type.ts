import { type FieldType, textOf } from '../format/field.ts';
import { everyKind, type PartFormat } from '../format/section.ts';
import { plainWord } from '../format/words.ts';
import { meantName } from '../reading/meant-name.ts';
import { refuse } from '../reading/report.ts';

/** A kind as a section of a site file takes it: a word that no part can have would find fault with all of them. */
export function kindIn({ section, kinds }: Pick<PartFormat<never>, 'section' | 'kinds'>): FieldType<string> {
  const names = [...Object.keys(kinds), ...Object.keys(everyKind)];
  const expects = `a kind as under ${section}, such as ${names[0]!}`;
  return {
    schema: { enum: names },
    expects,
    read: (node, spot) => {
      const typed = textOf(node, spot, expects);
      if (typed === null) return null;
      const same = names.find((kind) => plainWord(kind) === plainWord(typed));
      const values = { kind: typed, kinds: names.join(', ') };
      return same ?? refuse(spot, node.at, 'kind-unknown', values, meantName(typed, names));
    },
  };
}
