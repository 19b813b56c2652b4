import { expect, it } from 'vitest';
import { type SiteChange, tryChange } from '../../../src/study/try-change.ts';
import { filesAtHand, siteAtHand } from './sites-at-hand.ts';

/** The study without what hangs on the bytes of the file, to nine digits: inches typed come back as parts of a foot. */
function told(study: object): string {
  const { questions, assumptions, unknowns, parts, ...rest } = study as Record<string, unknown>;
  const bare = (parts as readonly { readonly typed: unknown }[]).map(({ typed, ...part }) => part);
  const rounded = (_: string, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(2)) : value);
  return JSON.stringify({ ...rest, parts: bare }, rounded);
}

it.each(filesAtHand())('%s: lists written again as they were say the same', (file) => {
  const { text, study, options } = siteAtHand(file);
  const { lines, conductors, states } = study.written!;
  const set = (section: 'lines' | 'conductors' | 'states', id: string, field: string, value: unknown) =>
    ({ is: 'set', section, id, field, value }) as SiteChange;
  const changes = [
    ...lines.flatMap((l) => [
      ...(l.path.length > 0 ? [set('lines', l.id, 'path', l.path)] : []),
      ...(l.lengths.length > 0 ? [set('lines', l.id, 'lengths', l.lengths)] : []),
    ]),
    ...conductors.flatMap((c) => (c.joints === null ? [] : [set('conductors', c.id, 'joints', c.joints)])),
    ...states.flatMap((s) => (s.open.length > 0 ? [set('states', s.id, 'open', s.open)] : [])),
  ];
  const tried = tryChange(text, file, changes, options);
  if ('problem' in tried) throw new Error(JSON.stringify(tried.problem));
  const again = tried.run.study;
  expect(again.findings.map((f) => [f.id, f.outcome, f.because.key])).toEqual(
    study.findings.map((f) => [f.id, f.outcome, f.because.key]),
  );
  expect(again.written).toEqual(study.written);
  expect(told({ lines: again.lines, reach: again.reach, bonding: again.bonding, parts: again.parts })).toBe(
    told({ lines: study.lines, reach: study.reach, bonding: study.bonding, parts: study.parts }),
  );
});

it('names what a new part may not be called: plugs, guys, places and readings too', () => {
  const { ids } = siteAtHand('examples/marl-hill/marl-hill.site.yaml').study.written!;
  for (const id of ['j1', 'guy-2', 'tower-foot', 'r3', 'clubhouse', 'storm', 'clamp1', 'fence'])
    expect(ids).toContain(id);
});
