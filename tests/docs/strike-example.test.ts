import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from '../shell/built-command.ts';
import { fenced, prose, readme } from './readme.ts';

const heading = '## What does this bond do in a strike';
const start = readme.indexOf(heading);
const section = readme.slice(start, readme.indexOf('\n## ', start + heading.length));
const said = prose(section).replace(/\s+/g, ' ');

/** The figure that the section says before a word. */
function kilovolt(pattern: RegExp): number {
  return Number(pattern.exec(said)![1]);
}

describe('the strike of the README', () => {
  let evenground: BuiltCommand;
  let page: string;
  beforeAll(() => {
    evenground = buildCommand();
    const [command] = fenced(section, 'sh');
    const words = command!.trim().split(' ').slice(2);
    const { code, out } = evenground.run(...words);
    expect(code).toBe(0);
    page = out;
  });
  afterAll(() => evenground.remove());

  it('names sections of the page', () => {
    const named = [...said.matchAll(/`([A-Z][A-Z ]+)`/g)].map((m) => m[1]!);
    expect(named).toHaveLength(2);
    for (const name of named) expect(page).toContain(`\n${name}\n`);
  });

  it('says the figure of the pair as it is, to a tenth', () => {
    const row = /^radio to main-panel\s+(\d+)/m.exec(page)!;
    expect(Number(row[1]) / kilovolt(/about (\d+) kV between them/)).toBeCloseTo(1, 1);
  });

  it('says what the bond is worth as it is, to a tenth', () => {
    const row = /^trench-wire[^:]*: radio to main-panel\s+(\d+)\s+(\d+)$/m.exec(page)!;
    expect(Number(row[1]) / kilovolt(/about (\d+) kV between them/)).toBeCloseTo(1, 1);
    expect(Number(row[2]) / kilovolt(/it is about (\d+) kV/)).toBeCloseTo(1, 1);
  });
});
