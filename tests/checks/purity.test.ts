import { expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

/** What a pure room must not touch: clock, chance, console, process, the world outside. */
const impure =
  /\bDate\.now\b|\bnew Date\(|\bMath\.random\b|\bconsole\.|\bprocess\.|\bfetch\(|\blocaleCompare\b|\bIntl\.|toLocale\w+\(|\bperformance\.|\bsetTimeout\b|from 'node:/;

it('only the shell meets the world', () => {
  const files = sourceFiles().filter((f) => f.room !== 'shell');
  const found = files.flatMap((f) =>
    f.text.split('\n').flatMap((line, i) => (impure.test(line) ? [`${f.path}:${i + 1}: ${line.trim()}`] : [])),
  );
  expect(found).toEqual([]);
});
