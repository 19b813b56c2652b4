import { readFileSync } from 'node:fs';

export const readme = readFileSync('README.md', 'utf8');
export const developers = readFileSync('DEVELOPERS.md', 'utf8');

/** The tutorial's blocks of YAML, by the number of their step. */
export function tutorialBlocks(text: string): ReadonlyMap<number, string> {
  const blocks = text.matchAll(/<!-- tutorial: step (\d+) -->\s*```yaml\n([\s\S]*?)```/g);
  return new Map([...blocks].map((m) => [Number(m[1]), m[2]!]));
}

/** Fenced blocks of a language. */
export function fenced(text: string, language: string): readonly string[] {
  return [...text.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map((m) => m[1]!);
}

/** The text without its fenced blocks. */
export function prose(text: string): string {
  return text.replace(/```[\s\S]*?```/g, '');
}

/** Everything in backticks in the prose. */
export function quoted(text: string): readonly string[] {
  return [...prose(text).matchAll(/`([^`\n]+)`/g)].map((m) => m[1]!);
}

/** Rows of the table under a heading row that begins with this cell; each row as its cells. */
export function table(text: string, firstHeading: string): readonly (readonly string[])[] {
  const lines = text.split('\n');
  const start = lines.findIndex((l) => l.startsWith(`| ${firstHeading} |`));
  const rows: (readonly string[])[] = [];
  for (const line of lines.slice(start + 2)) {
    if (!line.startsWith('|')) break;
    rows.push(
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
  }
  return rows;
}

/** A line whose comment says `under <section>` goes to the end of that section of the file. */
export function placeLines(site: string, added: string): string {
  return added
    .trimEnd()
    .split('\n')
    .reduce((text, line) => {
      const section = /# under (\w+)\s*$/.exec(line)?.[1];
      if (section === undefined) throw new Error(`no comment says where this line goes: ${line}`);
      const lines = text.trimEnd().split('\n');
      const head = lines.findIndex((l) => l.startsWith(`${section}:`));
      if (head < 0) throw new Error(`the file has no section ${section}`);
      const next = lines.findIndex((l, i) => i > head && !/^\s|^$/.test(l));
      lines.splice(next < 0 ? lines.length : next, 0, line);
      return `${lines.join('\n')}\n`;
    }, site);
}
