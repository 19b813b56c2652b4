import { describe, expect, it } from 'vitest';
import { textTable } from '../../src/shell/text-table.ts';

const table = {
  corner: 'Pair',
  head: ['kV', 'range'],
  rows: [
    { label: 'radio to panel', cells: ['68', '51 to 90'] },
    { label: 'a much longer name of a box to another one', cells: ['5.1', ''] },
    { label: 'Below:', cells: [] },
  ],
};

describe('a table of the terminal', () => {
  it('puts figures right-aligned under their headings', () => {
    expect(textTable(table, 80)).toEqual([
      'Pair                                         kV     range',
      'radio to panel                               68  51 to 90',
      'a much longer name of a box to another one  5.1',
      'Below:',
    ]);
  });

  it('puts a label that is too long above its figures', () => {
    expect(textTable(table, 32)).toEqual([
      'Pair             kV     range',
      'radio to panel   68  51 to 90',
      'a much longer name of a box to\n  another one',
      '                5.1',
      'Below:',
    ]);
  });

  it('names the figures where they do not fit side by side', () => {
    expect(textTable(table, 24)).toEqual([
      'radio to panel: kV 68;\n  range 51 to 90',
      'a much longer name of a\n  box to another one: kV\n  5.1',
      'Below:',
    ]);
  });
});
