import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from './built-command.ts';

const site = 'tests/cases/case-18.site.yaml';
const large = 'examples/marl-hill/marl-hill.site.yaml';
let evenground: BuiltCommand;
let folder: string;

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-works-'));
}, 60_000);
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** A study without what names the file. */
function studyWithoutName(file: string): unknown {
  const { out } = evenground.run('check', file, '--json');
  const study = JSON.parse(out);
  return { ...study, site: { ...study.site, file: '', checksum: '' } };
}

describe('works, as it is published', () => {
  it('lists works in order with cost, effect and what remains, and says what comes next', () => {
    const { code, out, err } = evenground.run('works', site);
    expect([code, err.replace(/^(?:trying|putting) .*\n/gm, '')]).toEqual([0, '']);
    expect(out).toContain('1. ');
    for (const text of ['Takes away: ', 'Then: ', 'ALL OF IT: ', 'MATERIAL']) expect(out).toContain(text);
    const last = out.trimEnd().split('\n').at(-1)!;
    expect(last).toMatch(/^After all of it: \d+ hazard, .* Next: evenground works .* -o better\.site\.yaml$/);
    expect(out).not.toMatch(/\bsafe\b/i);
    for (const line of out.split('\n').slice(0, -2)) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('says what it takes away, and under words of its own what nobody can tell any more', () => {
    const { out } = evenground.run('works', 'tests/cases/case-64.site.yaml');
    const said = out.replace(/\s+/g, ' ');
    const apart = 'Earth electrodes shack-rod, tower-earth are not bonded to the system of the supply intake';
    expect(said).toContain(`Leaves to be looked at (the file no longer tells): ${apart}.`);
    expect(said).not.toMatch(new RegExp(`Takes away: [^.]*${apart}`));
    expect(said).toContain('Takes away: The core of hf-line comes in without an arrester.');
    expect(said).toContain('comes before what lands on it.');
    const { steps } = JSON.parse(evenground.run('works', 'tests/cases/case-64.site.yaml', '--json').out);
    const rules = (what: 'cleared' | 'unsettled') =>
      steps.flatMap((s: { inTurn: Record<typeof what, { rule: string }[]> }) => s.inTurn[what].map((f) => f.rule));
    expect(rules('unsettled')).toContain('all-electrodes-one-system');
    expect(rules('cleared')).not.toContain('all-electrodes-one-system');
  });

  it('writes an improved file that a check finds as promised, and leaves the own file alone', () => {
    const own = join(folder, 'own.site.yaml');
    const better = join(folder, 'better.site.yaml');
    cpSync(site, own);
    const { code, out } = evenground.run('works', own, '-o', better, '--json');
    expect(code).toBe(0);
    const plan = JSON.parse(out);
    expect(readFileSync(better, 'utf8')).toBe(plan.text);
    expect(readFileSync(own, 'utf8')).toBe(readFileSync(site, 'utf8'));
    const { hazards, defects, advices, cannotTell } = JSON.parse(evenground.run('check', better, '--json').out).verdict;
    expect({ hazards, defects, advices, cannotTell }).toEqual(plan.after);
    const again = join(folder, 'again.site.yaml');
    writeFileSync(again, plan.text);
    expect(studyWithoutName(again)).toEqual(studyWithoutName(better));
    const comments = (text: string) => text.match(/#.*$/gm) ?? [];
    expect(comments(plan.text)).toEqual(comments(readFileSync(site, 'utf8')));
  });

  it('keeps within hours, and refuses a budget where nothing has a price', () => {
    const plan = JSON.parse(evenground.run('works', site, '--hours', '12', '--json').out);
    const hours = plan.steps.reduce(
      (sum: number, s: { cost: { hours: { high: number } } }) => sum + s.cost.hours.high,
      0,
    );
    expect(hours).toBeLessThanOrEqual(12);
    const { code, out, err } = evenground.run('works', site, '--budget', '100');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('--budget asks for prices');
  });

  it('refuses a budget that is no number, and to write over the file itself', () => {
    expect(evenground.run('works', large, '--budget', '-5').code).toBe(2);
    const own = join(folder, 'same.site.yaml');
    cpSync(site, own);
    const { code, err } = evenground.run('works', own, '-o', own);
    expect(code).toBe(4);
    expect(err).toContain('this is the file itself');
    expect(readFileSync(own, 'utf8')).toBe(readFileSync(site, 'utf8'));
  });

  it('is stopped by Ctrl-C: prints what it has, writes no file and leaves nothing behind', async () => {
    const better = join(folder, 'stopped.site.yaml');
    const child = spawn(process.execPath, [evenground.main, 'works', large, '-o', better]);
    let out = '';
    let err = '';
    let isStopped = false;
    child.stdout.on('data', (data) => {
      out += data;
    });
    child.stderr.on('data', (data) => {
      err += data;
      // it has told that it is at work
      if (!isStopped && err.includes('Ctrl-C')) isStopped = child.kill('SIGINT');
    });
    const code = await new Promise((ended) => child.on('close', ended));
    expect(code).toBe(4);
    expect(out).toContain('Stopped: what was found so far.');
    expect(out).toContain('was not written, because the search was stopped.');
    expect(existsSync(better)).toBe(false);
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([]);
  }, 60_000);
});
