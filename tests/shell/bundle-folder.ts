import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Empty at the start of a run of the tests; whoever needs the bundled command first puts it here, as `dist`. */
    readonly bundleFolder: string;
  }
}

/** Before all tests: a folder for the bundle that they share; after them it goes. Nothing is built before somebody asks. */
export function setup(project: TestProject): () => void {
  mkdirSync('node_modules/.cache', { recursive: true });
  const folder = mkdtempSync(resolve('node_modules/.cache/evenground-bundle-'));
  project.provide('bundleFolder', folder);
  // sources may have changed
  project.onTestsRerun(() => {
    rmSync(join(folder, 'dist'), { recursive: true, force: true });
  });
  return () => rmSync(folder, { recursive: true, force: true });
}
