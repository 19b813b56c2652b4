import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ruleIds } from '../../src/rules/rule-ids.ts';
import { explain } from '../../src/shell/commands/rules.ts';
import { notStated } from '../../src/words/not-stated.ts';
import { type BuiltCommand, buildCommand } from './built-command.ts';

let evenground: BuiltCommand;
beforeAll(() => {
  evenground = buildCommand();
});
afterAll(() => evenground.remove());

describe('explain', () => {
  it('says why, clause, what counts as met and how to put it right', () => {
    const { code, out, err } = evenground.run('explain', 'mast-ground-size');
    expect([code, err]).toEqual([0, '']);
    for (const part of [/^Why: /m, /^Met when: /m, /^Put right: /m, /^Source: NFPA 70, 810\.21\(H\)/m])
      expect(out).toMatch(part);
    expect(out.replace(/\s+/g, ' ')).toContain('The local authority decides.');
  });

  it('takes the words of the region', () => {
    expect(evenground.run('explain', 'all-electrodes-one-system').out).toContain('grounding electrode');
    const iec = evenground.run('explain', 'all-electrodes-one-system', '--region', 'iec').out;
    expect(iec).toContain('earth electrode');
    expect(iec).not.toContain('grounding');
  });

  it.each([
    ['mast-groundd', 'mast-grounded'],
    ['arrester-bonde', 'arrester-bonded'],
    ['Bend-Radius', 'bend-radius'],
  ])('names the near rule: %s', (typed, near) => {
    const { code, out, err } = evenground.run('explain', typed);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(`Did you mean ${near}?`);
  });

  it('names none where none is near', () => {
    expect(evenground.run('explain', 'xyzzy').err).toBe('xyzzy: no rule has this id. All of them: evenground rules\n');
  });

  it('leaves no name unfilled and no term unread, in any rule and region', () => {
    const written: string[] = [];
    const write = process.stdout.write;
    process.stdout.write = ((text: string) => written.push(text) > 0) as typeof write;
    try {
      for (const id of ruleIds) for (const region of ['us', 'iec']) explain(id, { region });
    } finally {
      process.stdout.write = write;
    }
    expect(written.length).toBe(2 * ruleIds.length);
    for (const text of written) {
      const shown = text.replace(/`[^`]*`/g, '');
      expect(shown).not.toMatch(/[{}[\]]|\bundefined\b|\bnull\b|\bunknown\b/);
    }
  });
});

it('explain says where a clause does not bind, and that a condition is not asked as a rule', () => {
  const abroad = evenground.run('explain', 'rod-spacing-minimum', '--region', 'iec').out;
  const home = evenground.run('explain', 'rod-spacing-minimum').out;
  expect(abroad.replace(/\s+/g, ' ')).toContain('which binds in the United States and not here');
  expect(home).not.toContain('not here');
  const [other, { reason }] = Object.entries(notStated)[0]!;
  const said = evenground.run('explain', other).out.replace(/\s+/g, ' ');
  expect(said).toContain(`${other}: not asked as a rule. ${reason.slice(0, 20)}`);
});

describe('rules', () => {
  it('lists the whole pack, one line a rule, and as JSON', () => {
    const lines = evenground.run('rules').out.trimEnd().split('\n');
    const others = Object.keys(notStated);
    expect(lines.length).toBe(ruleIds.length + others.length + 1);
    for (const [i, id] of ruleIds.entries()) expect(lines[i]).toContain(` ${id}: `);
    for (const [i, id] of others.entries()) expect(lines[ruleIds.length + i]).toMatch(`${id}: not asked as a rule. `);
    expect(lines.at(-1)).toBe(
      `${ruleIds.length} rules, ${others.length} conditions that are held elsewhere. Next: evenground explain <rule>`,
    );
    const records = JSON.parse(evenground.run('rules', '--json').out);
    expect(records.map((r: { id: string }) => r.id)).toEqual([...ruleIds]);
  });
});
