import { defineConfig } from 'vitest/config';

/** Files that put something else in a module's or a global's place: each keeps a process of its own. */
const replacing = [
  'tests/report/same-bytes.test.ts',
  'tests/rules/run-rules.test.ts',
  'tests/shell/print-pdf.test.ts',
  'tests/shell/rule-fault.test.ts',
];
const left = ['tests/bench/**', 'node_modules/**'];

export default defineConfig({
  test: {
    testTimeout: 180_000,
    hookTimeout: 180_000,
    pool: 'forks',
    // all cores: the runner itself, which the default leaves one for, has little to do
    maxWorkers: '100%',
    setupFiles: ['tests/seed.ts'],
    projects: [
      // modules are read once in a process: a third of the time
      {
        extends: true,
        test: {
          name: 'shared',
          include: ['tests/**/*.test.ts'],
          exclude: [...left, ...replacing],
          isolate: false,
          globalSetup: ['tests/shell/bundle-folder.ts'],
        },
      },
      // in the end: between the others each would stop a process that has its modules read
      { extends: true, test: { name: 'own', include: replacing, exclude: left, sequence: { groupOrder: 1 } } },
    ],
  },
});
