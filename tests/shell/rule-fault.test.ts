import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import type { Rule } from '../../src/rules/rule.ts';
import { exitCode, Stop } from '../../src/shell/exit-code.ts';
import { studyOfFile } from '../../src/shell/study-of-file.ts';

vi.mock('../../src/rules/index.ts', async (original) => {
  const { rules } = await original<{ rules: readonly Rule[] }>();
  const broken = () => {
    throw new Error('out of order');
  };
  return { rules: rules.map((r) => (r.id === 'rod-length-us' ? { ...r, check: broken } : r)) };
});

it('ends with the kind of a fault of evenground, naming the rule that failed', () => {
  const file = join(tmpdir(), `evenground-fault-${process.pid}.site.yaml`);
  writeFileSync(file, 'site: {name: x, region: us, units: ft, service: none}\n');
  const stopped = (() => {
    try {
      return studyOfFile(file, {});
    } catch (error) {
      return error;
    }
  })();
  expect(stopped).toBeInstanceOf(Stop);
  expect((stopped as Stop).code).toBe(exitCode.fault);
  expect((stopped as Stop).message).toMatch(
    /^The rule rod-length-us failed; this is a fault of evenground.*out of order/s,
  );
});
