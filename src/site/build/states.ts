import { nearName } from '../../units/near-name.ts';
import { fieldsOf, partFormats } from '../format/format.ts';
import { readValue, unwrapped } from '../format/read-value.ts';
import type { TypedSetting } from '../format/states.ts';
import { refuse } from '../reading/report.ts';
import type { TreeNode } from '../reading/tree.ts';
import type { TypedPart, TypedSite } from '../reading/typed-site.ts';
import type { Part, PartSection, State } from '../site.ts';
import type { Build } from './build.ts';
import { builders } from './parts.ts';

type TypedState = TypedSite['states'][number];
type AnyPart = TypedPart<PartSection>;

/** The states with their openings, and the parts that they change as they are then. */
export function buildStates(site: TypedSite, build: Build): readonly State[] {
  const parts = new Map(
    (Object.entries(site.parts) as [PartSection, readonly AnyPart[]][]).flatMap(([section, members]) =>
      members.map((part): [string, { section: PartSection; part: AnyPart }] => [part.id, { section, part }]),
    ),
  );
  return site.states.map((state) => buildState(state, parts, build));
}

type PartsById = ReadonlyMap<string, { readonly section: PartSection; readonly part: AnyPart }>;

function buildState({ id, values, source }: TypedState, parts: PartsById, build: Build): State {
  const settings = values.set ?? [];
  const open = (values.open ?? []).map((o) => ({
    at: o.at.text,
    side: o.side,
    gapM: o.saysGap ? o.gapM : values.gap,
    end: (o.saysEnd ? o.end : values.end) ?? ('unknown' as const),
  }));
  return {
    id,
    says: values.says,
    open,
    set: Object.fromEntries(settings.map(({ key, value }) => [key, plainValue(unwrapped(value))])),
    changed: changedParts(settings, parts, build),
    lost: (values.lost ?? []).map((ref) => ref.text),
    frozen: values.frozen ?? 'unknown',
    dry: values.dry ?? 'unknown',
    wet: values.wet ?? 'unknown',
    source,
  };
}

function changedParts(settings: readonly TypedSetting[], parts: PartsById, build: Build): readonly Part[] {
  const changed = new Map<string, { section: PartSection; part: AnyPart }>();
  for (const setting of settings) {
    const [id = '', ...rest] = setting.key.split('.');
    const before = changed.get(id) ?? parts.get(id);
    if (before === undefined) {
      refuse(setting.spot, setting.keyAt, 'id-unknown', { id }, nearName(id, [...parts.keys()].slice(0, 1000)));
      continue;
    }
    const part = withSetting(before.section, before.part, rest.join('.'), setting);
    if (part !== null) changed.set(id, { section: before.section, part });
  }
  return [...changed.values()]
    .map(({ section, part }) => (builders[section] as (p: AnyPart, b: Build) => Part)(part, build))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function withSetting(section: PartSection, part: AnyPart, name: string, setting: TypedSetting): AnyPart | null {
  const { value, spot, keyAt } = setting;
  const fields = fieldsOf(section);
  const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
  const own = Object.hasOwn(partFormats[section].kinds, part.kind);
  if (field === undefined || (own && field.kinds !== null && !field.kinds.includes(part.kind))) {
    const keys = Object.keys(fields);
    return refuse(
      spot,
      keyAt,
      'setting-unknown',
      { key: setting.key, field: name, keys: keys.join(', ') },
      nearName(name, keys),
    );
  }
  const read = readValue(field.type, value, spot);
  const typed = { ...part.typed, [name]: JSON.stringify(plainValue(unwrapped(value))).replace(/^"|"$/g, '') };
  return { ...part, values: { ...part.values, [name]: read }, typed } as AnyPart;
}

/** The value as plain text, lists and records. */
export function plainValue(node: TreeNode): unknown {
  if (node.is === 'blank') return null;
  if (node.is === 'text') return node.text.trim();
  if (node.is === 'list') return node.items.map(plainValue);
  return Object.fromEntries(node.entries.map(({ key, value }) => [key, plainValue(value)]));
}
