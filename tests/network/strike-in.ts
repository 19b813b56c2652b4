import { type StrikeFacts, strikeFacts } from '../../src/facts/strike-facts.ts';
import { pointOfText } from '../../src/site/point-text.ts';
import { readSite } from '../../src/site/read-site.ts';

export interface StrikeAsked {
  readonly at?: string;
  readonly wave?: string;
  readonly currentA?: number;
  readonly state?: string;
  readonly between?: readonly (readonly [string, string])[];
  readonly detail?: boolean;
}

/** One stroke into a site typed as text. */
export function strikeIn(text: string, asked: StrikeAsked = {}): StrikeFacts {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return strikeFacts(site, asked.state ?? null, {
    at: asked.at === undefined ? null : pointOfText(asked.at),
    wave: asked.wave ?? null,
    currentA: asked.currentA ?? null,
    between: asked.between ?? [],
    named: (asked.between ?? []).flat().flatMap((text) => pointOfText(text) ?? []),
    mostWires: null,
    detail: asked.detail ?? false,
  });
}

/** Greatest volts of a part against remote earth, without their sign. */
export function peakOfPart(strike: StrikeFacts, part: string): number {
  const found = strike.peaks.find((p) => p.part === part);
  if (found === undefined) throw new Error(`${part} has no figure: ${JSON.stringify(strike.refused)}`);
  return Math.abs(found.peak.value);
}

/** Greatest volts between two parts. */
export function peakBetween(strike: StrikeFacts, a: string, b: string) {
  const found = strike.differences.find((d) => d.pair.a === a && d.pair.b === b);
  if (found === undefined) throw new Error(`nothing between ${a} and ${b}`);
  return { ...found, volt: Math.abs(found.peak.value) };
}

/** Greatest current of a conductor or a line; 0: it carries nothing. */
export function ampereOf(strike: StrikeFacts, part: string): number {
  return Math.abs(strike.conductors.find((c) => c.part === part)?.peak.value ?? 0);
}
