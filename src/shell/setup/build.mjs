// Bundles the command and the library into dist, or into the folder that is named. One bundle with lazily loaded parts
// starts several times faster than hundreds of files.
import { readFileSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const out = resolve(root, process.argv[2] ?? 'dist');

rmSync(out, { recursive: true, force: true });
await build({
  absWorkingDir: root,
  entryPoints: { evenground: 'src/shell/main.ts', index: 'src/index.ts' },
  outdir: out,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external: ['puppeteer'],
  define: { EVENGROUND_VERSION: JSON.stringify(version) },
  // Packages written in the older module style call require for node's own modules.
  banner: {
    js: "import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);",
  },
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'linked',
  chunkNames: 'part-[hash]',
});
