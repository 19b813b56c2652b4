import type { StudyFinding, StudyLook } from './study.ts';

/**
 * What could not be told, turned round: each thing to look at once, whatever waits for it, ordered by what it would settle.
 * What everything hangs on comes first, then what settles most hazards, most defects, most advice; then the order of the
 * findings. A doubt that somebody agreed to leave open, or that hangs on another finding, is not on it.
 */
export function lookAtList(findings: readonly StudyFinding[]): readonly StudyLook[] {
  const firstWrong = findings.findIndex((f) => f.outcome === 'not met');
  const byLook = new Map<string, Gathered>();
  findings.forEach((f, index) => {
    if (f.outcome !== 'cannot tell' || f.agreed !== null || f.under !== null) return;
    const text = textOf(f);
    const before = byLook.get(text);
    if (before === undefined) byLook.set(text, { text, all: [f], leads: index < firstWrong, index });
    else before.all.push(f);
  });
  return withinOthers([...byLook.values()])
    .map(({ text, all, leads, index }) => ({ look: lookOf(text, all), leads, index }))
    .sort((a, b) => Number(b.leads) - Number(a.leads) || worseFirst(a.look, b.look) || a.index - b.index)
    .map(({ look }) => look);
}

interface Gathered {
  readonly text: string;
  readonly all: StudyFinding[];
  readonly leads: boolean;
  readonly index: number;
}

/** Without those that ask at some places what another one asks at these and more: whoever goes there settles both. */
function withinOthers(looks: readonly Gathered[]): readonly Gathered[] {
  const byAsks = new Map<string, Gathered[]>();
  for (const look of [...looks].sort((a, b) => placesOf(b).size - placesOf(a).size || a.index - b.index)) {
    const asks = look.all[0]!.asks ?? look.text;
    const wider = byAsks.get(asks) ?? [];
    const at = wider.findIndex((other) => [...placesOf(look)].every((id) => placesOf(other).has(id)));
    byAsks.set(asks, at < 0 ? [...wider, look] : wider.with(at, joined(wider[at]!, look)));
  }
  return [...byAsks.values()].flat();
}

function joined(wider: Gathered, { all, leads, index }: Gathered): Gathered {
  return {
    text: wider.text,
    all: [...wider.all, ...all],
    leads: wider.leads || leads,
    index: Math.min(wider.index, index),
  };
}

const placesOf = ({ all }: Gathered): ReadonlySet<string> => new Set(all.flatMap((f) => f.at));

/** A rule that failed by a fault of ours has nothing to look at. */
function textOf(f: StudyFinding): string {
  return f.remedy === '' ? f.because.text : f.remedy;
}

function lookOf(text: string, all: readonly StudyFinding[]): StudyLook {
  const count = (severity: StudyFinding['severity']) => all.filter((f) => f.severity === severity).length;
  const tools = all.map((f) => f.tool ?? 'eyes').filter((tool) => tool !== 'eyes');
  return {
    text,
    because: [...new Set(all.map((f) => f.because.text))],
    at: [...new Set(all.flatMap((f) => f.at))],
    tool: tools[0] ?? 'eyes',
    settles: all.map((f) => f.id),
    hazards: count('hazard'),
    defects: count('defect'),
    advices: count('advice'),
  };
}

function worseFirst(a: StudyLook, b: StudyLook): number {
  return b.hazards - a.hazards || b.defects - a.defects || b.advices - a.advices;
}
