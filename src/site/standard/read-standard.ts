import { dimensionOfKey } from '../../units/format.ts';
import { nearName } from '../../units/near-name.ts';
import type { Field, FieldType } from '../format/field.ts';
import { readValue, refuseOtherKeys } from '../format/read-value.ts';
import { oneOf, text } from '../format/words.ts';
import type { Problem } from '../problem.ts';
import { below, refuse, type Spot } from '../reading/report.ts';
import { childOf, type Entry, type MapNode, sayNode, type TreeNode } from '../reading/tree.ts';
import { limit } from './limit-type.ts';
import { type OwnCondition, type OwnerStandard, type OwnLimit, type OwnRule, ownSubjects } from './owner-standard.ts';
import { type Side, sideFile } from './side-file.ts';
import { conditionFields, type severities, wordFields } from './standard-format.ts';

/** A rule that an owner may set a limit of; `key`: null where it has no figure. */
export interface KnownRule {
  readonly id: string;
  readonly key: string | null;
}

/** Reads an owner's standard; all problems at once, each with its place. Never throws. */
export function readStandard(
  content: string,
  file: string,
  rules: readonly KnownRule[],
): { readonly standard: OwnerStandard | null; readonly problems: readonly Problem[] } {
  const { value, problems } = sideFile(content, ['name', 'edition', 'limits', 'rules', 'note'], (side) =>
    standardOf(side, file, rules),
  );
  return { standard: value, problems };
}

function standardOf({ root, spot }: Side, file: string, rules: readonly KnownRule[]): OwnerStandard {
  const word = (key: string) => {
    const node = childOf(root, key);
    return node === null ? null : readValue(text(), node, below(spot, key));
  };
  return {
    file,
    name: word('name') ?? file,
    edition: word('edition'),
    limits: entriesOf(root, 'limits', spot).flatMap((e) => limitOf(e, below(below(spot, 'limits'), e.key))),
    rules: entriesOf(root, 'rules', spot).flatMap((e) => ruleOf(e, rules, below(below(spot, 'rules'), e.key))),
  };
}

function entriesOf(root: MapNode, key: string, spot: Spot): readonly Entry[] {
  const node = childOf(root, key);
  if (node === null || node.is === 'blank' || (node.is === 'text' && node.text.trim() === 'none')) return [];
  if (node.is === 'map') return node.entries;
  refuse(below(spot, key), node.at, 'not-a-group', { found: sayNode(node), keys: 'a name of your own for each' });
  return [];
}

function limitOf({ key, value }: Entry, spot: Spot): readonly OwnLimit[] {
  const group = groupOf(value, spot, 'of, severity, because');
  if (group === null) return [];
  const ofNode = childOf(group, 'of');
  if (ofNode === null) {
    refuse(spot, value.at, 'limit-of-what', { subjects: ownSubjects.join(', ') });
    return [];
  }
  const of = readValue(oneOf(ownSubjects), ofNode, below(spot, 'of'));
  if (of === null) return [];
  const fields = conditionFields[of];
  refuseOtherKeys(group, ['of', ...Object.keys(fields), ...Object.keys(wordFields)], spot);
  const conditions = group.entries.flatMap((e): readonly OwnCondition[] => {
    const found = Object.hasOwn(fields, e.key) ? fields[e.key] : undefined;
    const read = found === undefined ? null : readValue(found.type, e.value, below(spot, e.key));
    return read === null ? [] : [read(e.key)];
  });
  const asks = group.entries.some((e) => Object.hasOwn(fields, e.key));
  if (!asks) refuse(spot, value.at, 'limit-asks-nothing', { keys: Object.keys(fields).join(', ') });
  const { severity, because, remedy } = wordsOf(group, spot);
  return [{ id: key, of, conditions, severity: severity ?? 'defect', because, remedy }];
}

function ruleOf({ key, keyAt, value }: Entry, rules: readonly KnownRule[], spot: Spot): readonly OwnRule[] {
  const known = rules.find((r) => r.id === key);
  if (known === undefined) {
    refuse(
      spot,
      keyAt,
      'rule-unknown',
      { rule: key },
      nearName(
        key,
        rules.map((r) => r.id),
      ),
    );
    return [];
  }
  const group = groupOf(value, spot, 'limit, severity, because');
  if (group === null) return [];
  refuseOtherKeys(group, ['limit', 'severity', 'because'], spot);
  const { severity, because } = wordsOf(group, spot);
  const typed = childOf(group, 'limit');
  return [
    { rule: key, severity, because, limit: typed === null ? null : ruleLimit(typed, known, below(spot, 'limit')) },
  ];
}

function ruleLimit(node: TreeNode, { id, key }: KnownRule, spot: Spot): OwnRule['limit'] {
  if (key === null) return refuse(spot, node.at, 'rule-without-limit', { rule: id });
  const read = readValue(limit(dimensionOfKey(key) ?? 'number'), node, spot);
  return read === null ? null : { key, ...read };
}

function wordsOf(group: MapNode, spot: Spot) {
  const read = <T>({ type }: Field<T>, key: string): T | null => {
    const node = childOf(group, key);
    return node === null ? null : readValue<T>(type as FieldType<T>, node, below(spot, key));
  };
  return {
    severity: read<(typeof severities)[number]>(wordFields.severity, 'severity'),
    because: read<string>(wordFields.because, 'because'),
    remedy: read<string>(wordFields.remedy, 'remedy'),
  };
}

function groupOf(node: TreeNode, spot: Spot, keys: string): MapNode | null {
  return node.is === 'map' ? node : refuse(spot, node.at, 'not-a-group', { found: sayNode(node), keys });
}
