/** Which room may import which, and the packages that it alone may use. Type imports count. */
export const rooms: Readonly<
  Record<string, { readonly rooms: readonly string[]; readonly packages: readonly string[] }>
> = {
  units: { rooms: [], packages: [] },
  words: { rooms: ['units'], packages: [] },
  math: { rooms: ['units'], packages: [] },
  materials: { rooms: ['units'], packages: [] },
  site: { rooms: ['units', 'words', 'materials'], packages: ['yaml'] },
  bonding: {
    rooms: ['site', 'materials', 'math', 'units'],
    packages: ['graphology', 'graphology-shortest-path', 'graphology-types'],
  },
  soil: { rooms: ['math', 'units'], packages: [] },
  electrodes: { rooms: ['soil', 'math', 'units'], packages: [] },
  currents: { rooms: ['math', 'units'], packages: [] },
  surge: { rooms: ['math', 'units'], packages: [] },
  network: {
    rooms: ['site', 'materials', 'bonding', 'soil', 'electrodes', 'currents', 'surge', 'units'],
    packages: [],
  },
  facts: { rooms: ['site', 'materials', 'bonding', 'network', 'units'], packages: [] },
  rules: { rooms: ['facts', 'site', 'materials', 'units', 'words', 'bonding'], packages: [] },
  study: { rooms: ['site', 'facts', 'rules', 'words', 'units', 'bonding'], packages: [] },
  compare: { rooms: ['study', 'units'], packages: [] },
  rework: { rooms: ['study', 'compare', 'materials', 'units'], packages: [] },
  drawing: { rooms: ['study', 'compare', 'rework', 'units', 'words'], packages: [] },
  report: { rooms: ['study', 'compare', 'rework', 'drawing', 'units', 'words'], packages: ['handlebars'] },
};

/** Rooms whose types (no code) another may name, beyond the table: shapes of facts that a rule and the study hand on. */
export const typesOnly: Readonly<Record<string, readonly string[]>> = {
  rules: ['bonding'],
  study: ['bonding'],
};

/** Files of the shell that alone may use a package. */
export const shellDoors: Readonly<Record<string, readonly string[]>> = {
  commander: ['src/shell/main.ts'],
  puppeteer: ['src/shell/print-pdf.ts', 'src/shell/find-browser.ts'],
};
