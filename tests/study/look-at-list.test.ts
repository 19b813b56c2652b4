import { describe, expect, it } from 'vitest';
import { lookAtList } from '../../src/study/look-at-list.ts';
import type { StudyFinding } from '../../src/study/study.ts';

function finding(id: string, severity: StudyFinding['severity'], remedy: string, more: Partial<StudyFinding> = {}) {
  return {
    id,
    rule: id.split(':')[0]!,
    family: 'code',
    codeSet: 'us',
    severity,
    outcome: 'cannot tell',
    at: [id.split(':')[1] ?? ''],
    under: null,
    title: id,
    because: { key: 'k', values: {}, text: `Why ${id}.` },
    measured: null,
    source: { document: 'd', edition: null, clause: null, provenance: 'ours' },
    remedy,
    tool: 'eyes',
    agreed: null,
    ...more,
  } as StudyFinding;
}

const order = (...findings: StudyFinding[]) => lookAtList(findings).map((l) => l.text);

describe('what to go and look at', () => {
  it('is one line for all that the same look settles', () => {
    const [look, ...others] = lookAtList([
      finding('a:E1', 'defect', 'Look at E1.'),
      finding('b:E1', 'hazard', 'Look at E1.', { tool: 'tape' }),
    ]);
    expect(others).toEqual([]);
    expect(look).toEqual({
      text: 'Look at E1.',
      because: ['Why a:E1.', 'Why b:E1.'],
      at: ['E1'],
      tool: 'tape',
      settles: ['a:E1', 'b:E1'],
      hazards: 1,
      defects: 1,
      advices: 0,
    });
  });

  it('is one line for what is asked at some places by one rule and at these and more by another', () => {
    const asks = 'Look at {at}.';
    const [look, ...others] = lookAtList([
      finding('a:E1', 'hazard', 'Look at E1.', { asks, at: ['E1'], tool: 'tape' }),
      finding('b:E1+E2', 'defect', 'Look at E1, E2.', { asks, at: ['E1', 'E2'] }),
    ]);
    expect(others).toEqual([]);
    expect(look).toEqual({
      text: 'Look at E1, E2.',
      because: ['Why b:E1+E2.', 'Why a:E1.'],
      at: ['E1', 'E2'],
      tool: 'tape',
      settles: ['b:E1+E2', 'a:E1'],
      hazards: 1,
      defects: 1,
      advices: 0,
    });
  });

  it('keeps what is asked elsewhere as well, and what is asked otherwise', () => {
    const at = (...ids: string[]) => ({ asks: 'Look at {at}.', at: ids });
    expect(
      order(
        finding('a', 'defect', 'Look at E1, E3.', at('E1', 'E3')),
        finding('b', 'defect', 'Look at E1, E2.', at('E1', 'E2')),
        finding('c', 'defect', 'Measure E1.', { asks: 'Measure {at}.', at: ['E1'] }),
        finding('d', 'defect', 'Look at E2.', { at: ['E2'] }),
      ),
    ).toEqual(['Look at E1, E3.', 'Look at E1, E2.', 'Measure E1.', 'Look at E2.']);
  });

  it('is ordered by what it settles: hazards, then defects, then advice, then as found', () => {
    expect(
      order(
        finding('a:1', 'advice', 'advice'),
        finding('b:1', 'defect', 'one defect'),
        finding('c:1', 'defect', 'two defects'),
        finding('d:2', 'defect', 'two defects'),
        finding('e:1', 'hazard', 'hazard'),
        finding('f:1', 'advice', 'advice too'),
      ),
    ).toEqual(['hazard', 'two defects', 'one defect', 'advice', 'advice too']);
  });

  it('begins with what everything hangs on: a doubt that stands before what is wrong', () => {
    const lead = finding('service:1', 'defect', 'find the service');
    const wrong = finding('wrong:1', 'hazard', 'mend it', { outcome: 'not met' });
    expect(order(lead, wrong, finding('h:1', 'hazard', 'hazard'))).toEqual(['find the service', 'hazard']);
  });

  it.each([
    ['is met', { outcome: 'met' as const }],
    ['is not met', { outcome: 'not met' as const }],
    ['hangs on another finding', { under: 'x' }],
    ['was agreed to', { agreed: { reason: null, by: null, date: null } }],
  ])('leaves out what %s', (_, more) => {
    expect(order(finding('a:1', 'hazard', 'look', more))).toEqual([]);
  });
});
