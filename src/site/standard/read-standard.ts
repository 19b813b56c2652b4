import { dimensionOfKey } from '../../units/format.ts';
import { nearName } from '../../units/near-name.ts';
import type { Fields, FieldType } from '../format/field.ts';
import { readValue, refuseOtherKeys } from '../format/read-value.ts';
import type { Problem } from '../problem.ts';
import { below, refuse, type Spot } from '../reading/report.ts';
import { childOf, type Entry, type MapNode, sayNode, type TreeNode } from '../reading/tree.ts';
import { type Limit, limit } from './limit-type.ts';
import { type OwnCondition, type OwnerStandard, type OwnLimit, type OwnRule, ownSubjects } from './owner-standard.ts';
import { type Side, sideFile } from './side-file.ts';
import {
  conditionFields,
  noteFields,
  ruleLimitFields,
  ruleWordFields,
  type severities,
  standardFields,
  standardGroups,
  subjectFields,
  wordFields,
} from './standard-format.ts';

/** A rule that an owner may set a limit of; `key`: null where it has no figure. `says`: its title, for a schema. */
export interface KnownRule {
  readonly id: string;
  readonly key: string | null;
  /** The sides that the rule asks of that figure; left out: nobody knows. */
  readonly senses?: readonly Limit['sense'][];
  readonly says?: string;
}

/** Reads an owner's standard; all problems at once, each with its place. Never throws. */
export function readStandard(
  content: string,
  file: string,
  rules: readonly KnownRule[],
): { readonly standard: OwnerStandard | null; readonly problems: readonly Problem[] } {
  const keys = [standardFields, standardGroups, noteFields].flatMap((group) => Object.keys(group));
  const { value, problems } = sideFile(content, keys, (side) => standardOf(side, file, rules));
  return { standard: value, problems };
}

function standardOf({ root, spot }: Side, file: string, rules: readonly KnownRule[]): OwnerStandard {
  const word = (key: keyof typeof standardFields) => {
    const node = childOf(root, key);
    return node === null ? null : readValue(standardFields[key].type, node, below(spot, key));
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
  const of = readValue(subjectFields.of.type, ofNode, below(spot, 'of'));
  if (of === null) return [];
  const fields = conditionFields[of];
  refuseOtherKeys(
    group,
    [subjectFields, fields, wordFields].flatMap((keys) => Object.keys(keys)),
    spot,
  );
  const conditions = group.entries.flatMap((e): readonly OwnCondition[] => {
    const found = Object.hasOwn(fields, e.key) ? fields[e.key] : undefined;
    const read = found === undefined ? null : readValue(found.type, e.value, below(spot, e.key));
    return read === null ? [] : [read(e.key)];
  });
  const asks = group.entries.some((e) => Object.hasOwn(fields, e.key));
  if (!asks) refuse(spot, value.at, 'limit-asks-nothing', { keys: Object.keys(fields).join(', ') });
  const { severity, because, remedy } = wordsOf(group, wordFields, spot);
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
  refuseOtherKeys(
    group,
    [ruleLimitFields, ruleWordFields].flatMap((keys) => Object.keys(keys)),
    spot,
  );
  const { severity, because } = wordsOf(group, ruleWordFields, spot);
  const typed = childOf(group, 'limit');
  return [
    { rule: key, severity, because, limit: typed === null ? null : ruleLimit(typed, known, below(spot, 'limit')) },
  ];
}

function ruleLimit(node: TreeNode, { id, key, senses }: KnownRule, spot: Spot): OwnRule['limit'] {
  if (key === null) return refuse(spot, node.at, 'rule-without-limit', { rule: id });
  const read = readValue(limit(dimensionOfKey(key) ?? 'number', senses), node, spot);
  // a limit the other way round would find what the rule is glad of
  if (read !== null && senses?.includes(read.sense) === false)
    return refuse(spot, node.at, 'limit-other-side', { rule: id, typed: `at ${read.sense}`, sense: `at ${senses[0]}` });
  return read === null ? null : { key, ...read };
}

function wordsOf(group: MapNode, fields: Fields, spot: Spot) {
  const read = <T>(key: string): T | null => {
    const node = childOf(group, key);
    const type = Object.hasOwn(fields, key) ? fields[key]!.type : null;
    return node === null || type === null ? null : readValue<T>(type as FieldType<T>, node, below(spot, key));
  };
  return {
    severity: read<(typeof severities)[number]>('severity'),
    because: read<string>('because'),
    remedy: read<string>('remedy'),
  };
}

function groupOf(node: TreeNode, spot: Spot, keys: string): MapNode | null {
  return node.is === 'map' ? node : refuse(spot, node.at, 'not-a-group', { found: sayNode(node), keys });
}
