import { isMap, isScalar, isSeq, type Node, parseDocument, type YAMLMap } from 'yaml';

/** Fields whose text names things of the file. */
const naming = new Set(
  'from to passes path at on where along near within_reach between joints joint open lost service part plug bond bend anchor electrode of corner leads_to serves_from'.split(
    ' ',
  ),
);
const sections = new Set(
  'buildings places electrodes supports antennas bars arresters equipment lines conductors joints metalwork states readings'.split(
    ' ',
  ),
);

/** A site file in which everything has another name: parts, places, buildings, guys, plugs, states, readings. */
export function renameIds(text: string, rename: (id: string, i: number) => string): string {
  const doc = parseDocument(text);
  const root = doc.contents as YAMLMap;
  const ids = [...new Set(idsOf(root))];
  const names = new Map(ids.map((id, i) => [id, rename(id, i)]));
  for (const { key, value } of root.items as Pair[]) {
    const section = String(key.value);
    if (sections.has(section) && isMap(value)) renameKeys(value, names);
    walk(value, section, names);
  }
  return doc.toString({ lineWidth: 0 });
}

interface Pair {
  readonly key: { value: unknown };
  readonly value: Node;
}

function idsOf(root: YAMLMap): readonly string[] {
  const ids: string[] = [];
  for (const { key, value } of root.items as Pair[]) {
    if (!sections.has(String(key.value)) || !isMap(value)) continue;
    ids.push(...(value.items as Pair[]).map((p) => String(p.key.value)));
  }
  collect(root, ids);
  return ids;
}

/** Guys and plugs are named inside a part. */
function collect(node: unknown, ids: string[]): void {
  if (isSeq(node)) for (const item of node.items) collect(item, ids);
  if (!isMap(node)) return;
  for (const { key, value } of node.items as unknown as Pair[]) {
    if (key.value === 'guys' && isMap(value)) ids.push(...(value.items as Pair[]).map((p) => String(p.key.value)));
    if (key.value === 'plug' && isScalar(value)) ids.push(String(value.value));
    collect(value, ids);
  }
}

function renameKeys(map: YAMLMap, names: ReadonlyMap<string, string>): void {
  for (const { key } of map.items as Pair[]) key.value = names.get(String(key.value)) ?? key.value;
}

function walk(node: unknown, field: string, names: ReadonlyMap<string, string>): void {
  if (isSeq(node)) for (const item of node.items) walk(item, field, names);
  if (isScalar(node) && naming.has(field)) node.value = renamed(node.value, names);
  if (!isMap(node)) return;
  for (const { key, value } of node.items as unknown as Pair[]) {
    if (field === 'set') key.value = renamed(key.value, names);
    if (key.value === 'guys' && isMap(value)) renameKeys(value, names);
    walk(value, String(key.value), names);
  }
}

/** `tower@45 ft`, `c1:E1`, `house.ne`: the thing named and, after a colon, the other one. */
function renamed(value: unknown, names: ReadonlyMap<string, string>): unknown {
  if (typeof value !== 'string' && typeof value !== 'number') return value;
  const [, id = '', more = ''] = /^([^@.:]+)(.*)$/s.exec(String(value)) ?? [];
  const other = /^:(.+)$/s.exec(more)?.[1];
  const tail = other === undefined ? more : `:${names.get(other) ?? other}`;
  return names.has(id.trim()) ? `${names.get(id.trim())}${tail}` : value;
}
