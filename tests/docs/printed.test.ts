import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from '../shell/built-command.ts';
import { readme } from './readme.ts';

/** What the README shows of a command, by the command: blocks under a mark such as `<!-- printed: works FILE -->`. */
const shown = [...readme.matchAll(/<!-- printed: (.+?) -->\s*```text\n([\s\S]*?)```/g)].map((m) => ({
  command: m[1]!,
  block: m[2]!,
}));

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

describe('what the README shows of a command is what it prints', () => {
  let evenground: BuiltCommand;
  beforeAll(() => {
    evenground = buildCommand();
  });
  afterAll(() => evenground.remove());

  it('of works and of a comparison at least', () => {
    expect(new Set(shown.map(({ command }) => command.split(' ')[0]))).toEqual(new Set(['works', 'compare']));
  });

  it.each(shown)('$command', { timeout: 120_000 }, ({ command, block }) => {
    const { out } = evenground.run(...command.split(' '));
    const parts = block.split(/\n\n|\n(?= {2}\S)/).map(oneLine);
    expect(parts.filter((part) => part.length === 0 || !oneLine(out).includes(part))).toEqual([]);
  });

  it('and each of them stands above as a command to type', () => {
    expect(shown.filter(({ command }) => !readme.includes(`npx evenground ${command}\n`))).toEqual([]);
  });
});
