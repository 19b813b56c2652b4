import { defineConfig } from 'vitest/config';

/** Files that put something else in a module's or a global's place: each keeps a process of its own. */
const replacing = [
  'tests/report/same-bytes.test.ts',
  'tests/rules/run-rules.test.ts',
  'tests/shell/print-pdf.test.ts',
  'tests/shell/rule-fault.test.ts',
];
/** Files that take long and look at much at once: asked for with LONG=1. */
const long = [
  'tests/compare/laws.test.ts',
  'tests/network/earth-with-wires.test.ts',
  'tests/report/compare-pages-browser.test.ts',
  'tests/report/works-pages-browser.test.ts',
  'tests/rework/candidates/tried-works.test.ts',
  'tests/rework/plan/in-batches.test.ts',
  'tests/rework/plan/wanted-works.test.ts',
  'tests/rework/routes/tree-in-plane.test.ts',
];
const left = ['tests/bench/**', 'node_modules/**', ...(process.env.LONG === undefined ? long : [])];

export default defineConfig({
  test: {
    testTimeout: 180_000,
    hookTimeout: 180_000,
    pool: 'forks',
    setupFiles: ['tests/seed.ts'],
    projects: [
      // modules are read once in a process: a third of the time
      {
        extends: true,
        test: { name: 'shared', include: ['tests/**/*.test.ts'], exclude: [...left, ...replacing], isolate: false },
      },
      { extends: true, test: { name: 'own', include: replacing, exclude: left } },
    ],
  },
});
