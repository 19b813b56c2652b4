import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse, parseDocument, visit } from 'yaml';
import { changeText, type SiteChange } from '../../src/site/change.ts';
import { sections } from '../../src/site/format/format.ts';
import type { SectionName } from '../../src/site/site.ts';
import { siteTexts } from './site-texts.ts';

type Plain = Record<string, Record<string, Record<string, unknown>>>;

/** The files as they are, with line ends of the other kind, and laid out with a field a line. */
const texts = siteTexts().flatMap(({ text }) => [text, text.replaceAll('\n', '\r\n'), laidOut(text)]);

function laidOut(text: string): string {
  const document = parseDocument(text, { schema: 'failsafe' });
  visit(document, {
    Collection: (_, node) => {
      node.flow = false;
    },
  });
  return document.toString({ lineWidth: 0 });
}

const partSections = sections.filter((s) => s.holds === 'members').map((s) => s.name as SectionName);

/** Text of any script, quotes, colons, hashes and line ends included. */
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: fc.constantFrom(...'a:# ,[]{}"\'\\\n&*!|>%@-?~') }),
);

const anyChange = fc.record({ index: fc.nat(texts.length - 1), pick: fc.nat(), what: fc.nat(5), note: anyText });
type Picked = typeof anyChange extends fc.Arbitrary<infer T> ? T : never;

/** A site text, and a change to it that names something in it. */
function toCase({ index, pick, what, note }: Picked) {
  const text = texts[index]!;
  const site = parse(text) as Plain;
  const parts = partSections.flatMap((section) =>
    typeof site[section] === 'object' && site[section] !== null
      ? Object.keys(site[section]).map((id) => ({ section, id }))
      : [],
  );
  const { section, id } = parts[pick % parts.length]!;
  const part = site[section]?.[id];
  const fields = typeof part === 'object' && part !== null && !Array.isArray(part) ? Object.keys(part) : [];
  const field = fields[pick % Math.max(1, fields.length)] ?? 'note';
  const changes: readonly SiteChange[] = [
    { is: 'set', section, id, field: 'note', value: note },
    { is: 'set', section, id, field, value: 'unknown' },
    { is: 'set', section, id, field, value: null },
    { is: 'add', section: partSections[pick % partSections.length]!, id: 'new-one', fields: { note } },
    { is: 'remove', section, id },
    { is: 'set', section: 'site', id: null, field: 'owner', value: note },
  ];
  return { text, site, change: changes[what]! };
}

/** The site that a change must give, made from the plain values of the old one. */
function changedSite(site: Plain, change: SiteChange): unknown {
  const copy = structuredClone(site) as Record<string, unknown>;
  const group = (held: unknown) => (typeof held === 'object' && held !== null ? (held as Record<string, unknown>) : {});
  const section = group(copy[change.section]);
  copy[change.section] = section;
  if (change.is === 'add') section[change.id] = change.fields;
  if (change.is === 'remove') delete section[change.id];
  if (change.is === 'remove' && Object.keys(section).length === 0) copy[change.section] = 'none';
  if (change.is !== 'set') return copy;
  const isPosition = Array.isArray(section[change.id ?? '']) || typeof section[change.id ?? ''] === 'string';
  if (isPosition) section[change.id!] = { at: section[change.id!] };
  const part = change.id === null ? section : group(section[change.id]);
  if (change.id !== null) section[change.id] = part;
  if (change.value === null) delete part[change.field];
  else part[change.field] = change.value;
  return copy;
}

/** A part without fields may be left blank. */
function blankAsEmpty(site: unknown): unknown {
  const sections = Object.entries(site as Record<string, unknown>).map(([name, section]) => {
    if (typeof section !== 'object' || section === null || Array.isArray(section)) return [name, section];
    return [name, Object.fromEntries(Object.entries(section).map(([id, part]) => [id, part ?? {}]))];
  });
  return Object.fromEntries(sections);
}

/** Lines with their ends, so that nothing of a line is left out of the comparison. */
function lines(text: string): readonly string[] {
  return text.split(/(?<=\n)/);
}

/** Lines of the one that are not in the other, in the best alignment of the two. */
function difference(
  before: string,
  after: string,
): { readonly old: readonly string[]; readonly now: readonly string[] } {
  const [a, b] = [lines(before), lines(after)];
  // same[i][j]: how many lines a from i on and b from j on have in common.
  const same = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      same[i]![j] = a[i] === b[j] ? 1 + same[i + 1]![j + 1]! : Math.max(same[i + 1]![j]!, same[i]![j + 1]!);
    }
  }
  const old: string[] = [];
  const now: string[] = [];
  for (let i = 0, j = 0; i < a.length || j < b.length; ) {
    if (i < a.length && j < b.length && a[i] === b[j]) [i, j] = [i + 1, j + 1];
    else if (j === b.length || (i < a.length && same[i + 1]![j]! >= same[i]![j + 1]!)) old.push(a[i++]!);
    else now.push(b[j++]!);
  }
  return { old, now };
}

const runs = { seed: 20_260_502, numRuns: 200 };

describe('any change to any file', () => {
  it('reads back as the same site with that change and no other, and leaves all other lines alone', () => {
    const made = { set: 0, add: 0, remove: 0 };
    fc.assert(
      fc.property(anyChange, (picked) => {
        const { text, site, change } = toCase(picked);
        const result = changeText(text, [change]);
        // The rest of the file may still name what was taken out, or need it; the text itself can always be edited.
        if ('problem' in result) {
          // a place typed with a coordinate a line is left to its owner
          const isPlace = change.section === 'places' && result.problem.key === 'change-layout';
          if (!isPlace) expect(result.problem.key).not.toMatch(/^yaml|^change-(?:reaches|layout)/);
          return;
        }
        made[change.is]++;
        expect(blankAsEmpty(parse(result.text))).toEqual(blankAsEmpty(changedSite(site, change)));
        expectOthersUntouched(text, result.text, change);
      }),
      runs,
    );
    process.stdout.write(
      `changes made: ${made.set} set, ${made.add} added, ${made.remove} removed of ${runs.numRuns}\n`,
    );
    expect(made.set).toBeGreaterThan(runs.numRuns * 0.4);
    expect(made.add).toBeGreaterThan(runs.numRuns * 0.1);
    expect(made.remove).toBeGreaterThan(runs.numRuns * 0.02);
  }, 300_000);
});

function expectOthersUntouched(before: string, after: string, change: SiteChange): void {
  const { old, now } = difference(before, after);
  const ends = new Set(lines(before).map(lineEnd));
  for (const line of lines(after)) expect(ends).toContain(lineEnd(line));
  if (change.is === 'add') {
    expect(now.join('')).toContain('new-one');
    expect(now.length - old.length).toBeLessThanOrEqual(3);
    expect(old.length).toBeLessThanOrEqual(1);
  } else if (change.is === 'remove') {
    expect(old.join('')).toContain(`${change.id}:`);
    expect(old.length).toBeLessThanOrEqual(1 + linesOf(before, [change.section, change.id]));
  } else {
    const path = change.id === null ? [change.section, change.field] : [change.section, change.id, change.field];
    expect(old.length).toBeLessThanOrEqual(1 + linesOf(before, path));
    expect(now.length).toBeLessThanOrEqual(1);
  }
}

function lineEnd(line: string): string {
  return /\r?\n$/.exec(line)?.[0] ?? '';
}

/** Lines that a value takes. */
function linesOf(text: string, path: readonly (string | null)[]): number {
  const node = parseDocument(text).getIn(path, true) as { range?: readonly [number, number, number] } | undefined;
  return node?.range === undefined ? 0 : text.slice(node.range[0], node.range[1]).split('\n').length;
}
