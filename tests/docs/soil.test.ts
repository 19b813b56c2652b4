import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { buildCommand } from '../shell/built-command.ts';
import { readme } from './readme.ts';

/** Blocks of the README under a mark such as `<!-- soil: printed -->`. */
function marked(mark: string): readonly string[] {
  const blocks = readme.matchAll(new RegExp(`<!-- soil: ${mark} -->\\s*\`\`\`\\w+\\n([\\s\\S]*?)\`\`\``, 'g'));
  return [...blocks].map((m) => m[1]!);
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

describe('what the README says of a bad rod', () => {
  const [, file] = /^npx evenground soil (examples\/\S+)$/m.exec(readme)!;
  const evenground = buildCommand();
  const { code, err, out } = evenground.run('soil', file!);
  afterAll(() => evenground.remove());

  it('is typed in the example as it is shown', () => {
    const typed = readFileSync(file!, 'utf8').split('\n');
    const lines = marked('typed').flatMap((block) => block.trimEnd().split('\n'));
    expect(lines.length).toBeGreaterThan(4);
    expect(lines.filter((line) => !typed.includes(line))).toEqual([]);
  });

  it('is printed by the command as it is shown', () => {
    expect([code, err]).toEqual([0, '']);
    const shown = marked('printed')
      .flatMap((block) => block.split(/\n(?= {2}- )/))
      .map(oneLine);
    expect(shown.length).toBeGreaterThan(4);
    expect(shown.filter((text) => !oneLine(out).includes(text))).toEqual([]);
  });

  it('and what it says in words: no 25 ohm here, and all tied to one system', () => {
    expect(oneLine(out)).toContain('Neither length nor number that was tried brings 25 ohm here.');
    expect(oneLine(out)).toContain('tie all of it to one system first');
  });
});
