import type { Layout } from './claim.ts';

export const layout: Layout = {
  id: 'case-44',
  title: 'Flat roof, magnet-foot antenna on an upturned cake tin (Germany)',
  sources: [
    'https://www.qrpforum.de/forum/index.php?thread/11934-wo-erdet-man-eine-magnetfu%C3%9Fantenne-f%C3%BCr-station%C3%A4rbetrieb/',
  ],
  grade: 'C',
  files: ['case-44.site.yaml', 'case-44-soldered.site.yaml', 'case-44-after.site.yaml'],
  must: [
    {
      says: 'The rods are not tied to the main earthing bar: severe.',
      ask: { finding: 'all-electrodes-one-system', at: 'rod-1', severity: 'hazard' },
    },
    { says: 'The first rod does not reach it.', ask: { unbonded: 'rod-1' } },
    { says: 'Nor the second.', ask: { unbonded: 'rod-2' } },
    {
      says: 'Both hang on one wire and are one earth.',
      ask: { together: ['rod-1', 'rod-2'] },
    },
    {
      says: 'Whether the gutter conducts throughout decides, and is asked.',
      ask: { unknownAt: /gutter/ },
    },
    {
      says: 'Through a gutter of unknown joints the way to the rods is not a known one.',
      ask: { noWay: ['cake-tin', 'rod-1'] },
    },
    {
      says: 'Copper on zinc is a pair far apart.',
      ask: { finding: 'galvanic-pair', at: 'tin-lead:to' },
    },
    {
      says: 'A magnet foot has no metal way into the tin.',
      ask: { noWay: ['whip', 'cake-tin'] },
    },
    {
      says: 'So the whip stays off earth even where the gutter is soldered.',
      ask: { noWay: ['whip', 'rod-1'] },
      ofFile: 'case-44-soldered.site.yaml',
    },
    {
      says: 'Soldered, tin, gutter and rods are one earth.',
      ask: { together: ['cake-tin', 'gutter', 'rod-1', 'rod-2'] },
      ofFile: 'case-44-soldered.site.yaml',
    },
    {
      says: 'An earth of an antenna by itself, away from the main earthing bar, is not permitted.',
      ask: { finding: 'iec-antenna-electrode-to-main-bar', at: 'rod-1', severity: 'hazard' },
      ofFile: 'case-44-soldered.site.yaml',
    },
    {
      says: 'Tied, rods and main earthing bar are one system.',
      ask: { together: ['rod-1', 'rod-2', 'gutter', 'cake-tin', 'main-bar'] },
      ofFile: 'case-44-after.site.yaml',
    },
    {
      says: 'Whether the parapet sheet is bonded was not told.',
      ask: { finding: 'metalwork-bonded', at: 'parapet', outcome: 'cannot tell' },
    },
  ],
  mustNot: [
    {
      says: '16 mm2 of copper is the size that is asked.',
      ask: { finding: 'antenna-earthing-size-iec', at: 'tin-lead' },
    },
    {
      says: '8 ft of rod is asked in another country.',
      ask: { finding: 'rod-length-us', at: 'rod-1' },
    },
    { says: 'So are 25 ohm.', ask: { finding: 'single-rod-25-ohm', at: 'rod-1' } },
    {
      says: 'A gutter nobody looked at is not a bonded one.',
      ask: { together: ['cake-tin', 'rod-1'] },
    },
    {
      says: 'A magnet foot drains nothing through its base.',
      ask: { finding: 'core-static-drain', at: 'coax', outcome: 'met' },
    },
    {
      says: 'What the protector is bonded to was not told.',
      ask: { finding: 'arrester-bonded', at: 'coax-protector' },
    },
    {
      says: 'That the parapet sheet is not bonded, nobody said.',
      ask: { finding: 'metalwork-bonded', at: 'parapet' },
    },
    {
      says: 'Tied, the rods are not reported as apart.',
      ask: { finding: 'all-electrodes-one-system', at: 'rod-1' },
      ofFile: 'case-44-after.site.yaml',
    },
    {
      says: 'Nor as away from the main earthing bar.',
      ask: { finding: 'iec-antenna-electrode-to-main-bar', at: 'rod-1' },
      ofFile: 'case-44-after.site.yaml',
    },
  ],
  notYet: [
    {
      sentence: 'Which part of a magnet foot can be earthed at all?',
      because: 'no answer stands in the report',
    },
    {
      sentence: 'A gutter counts only with a section that is large enough.',
      because: 'no rule asks the section of metalwork that serves as a conductor',
    },
    {
      sentence: 'Clamps rated for lightning current.',
      because: 'the clamps of the plan were not described, and no rule asks the rating',
    },
  ],
};
