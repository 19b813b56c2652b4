#!/usr/bin/env node
import { setFlagsFromString } from 'node:v8';
import { Command, CommanderError } from 'commander';
import { type ExitCode, exitCode, Stop } from './exit-code.ts';
import { version } from './version.ts';

// A run of this command is short. Left alone, the engine of Node 20 spends a third of its processor time on optimizing
// functions that are hardly used again; this much later it optimizes only what runs for long. Others know better.
if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=1000000');

/** Each command is loaded when it is called, so that a check does not wait for what only a report needs. */
function build(done: (code: ExitCode) => void): Command {
  const program = new Command('evenground');
  program
    .description(
      "A station's grounding on one page: what is tied to what, what one failure undoes, and what to change first.",
    )
    .version(version)
    .exitOverride()
    .showHelpAfterError()
    .configureOutput({ writeErr: (text) => process.stderr.write(text) });

  program
    .command('check <file>')
    .description('findings in order of danger, and the verdict')
    .option('--state <name>', 'a state of the file, such as storm')
    .option('--json', 'the whole study as JSON')
    .option('--date <date>', 'date of the study')
    .option('-o, --output <file>', 'write the result there; - is stdout')
    .option('--exit-1-from <level>', 'exit 1 from hazard, defect, advice or cannot-tell', 'hazard')
    .action(async (file, options) => done((await import('./commands/check.ts')).check(file, options)));

  program
    .command('report <file>')
    .description('the HTML page and the study beside it; with --pdf the PDF too')
    .requiredOption('-o, --output <dir>', 'folder for the report')
    .option('--state <name>', 'a state of the file')
    .option('--date <date>', 'date printed on the cover')
    .option('--pdf', 'print the page to PDF as well')
    .option('--browser <path>', 'browser that prints the PDF')
    .option('--exit-1-from <level>', 'exit 1 from hazard, defect, advice or cannot-tell')
    .action(async (file, options) => done(await (await import('./commands/report.ts')).report(file, options)));

  program
    .command('path <file> <from> <to>')
    .description('the best way through permanent metal, piece by piece, and how many separate ways there are')
    .option('--state <name>', 'a state of the file')
    .option('--json', 'as JSON')
    .action(async (file, from, to, options) =>
      done((await import('./commands/path.ts')).path(file, from, to, options)),
    );

  program
    .command('without <file> <part...>')
    .description('what is lost and what changes when these parts fail')
    .option('--state <name>', 'a state of the file')
    .option('--json', 'as JSON')
    .action(async (file, parts, options) =>
      done((await import('./commands/without.ts')).without(file, parts, options)),
    );

  addPhysics(program, done);
  addRework(program, done);
  addReference(program, done);
  return program;
}

/** What is worked out of soil and of lightning. */
function addPhysics(program: Command, done: (code: ExitCode) => void): void {
  program
    .command('soil <file>')
    .description('what the soil is, what each electrode has in it now and in each season, and what would lower it')
    .option('--state <name>', 'a state of the file, such as winter')
    .option('--json', 'as JSON')
    .action(async (file, options) => done((await import('./commands/soil.ts')).soil(file, options)));

  program
    .command('strike <file>')
    .description('one strike: volts between things, where the current goes, what it heats')
    .option(
      '--at <part>',
      'what it strikes, or the line that a surge comes in on; default the top of the highest support',
    )
    .option('--nearby <distance>', 'the ground beside the site instead, such as "100 m" or "100 m north"')
    .option('--ionisation <field>', 'soil breaks down at this field, such as "300 kV/m"; default it holds')
    .option('--current <current>', 'its peak, such as "30 kA"')
    .option('--wave <wave>', '10/350, 1/200, 0.25/100, 8/20 or 1.2/50')
    .option('--between <a,b>', 'this pair too; may be repeated', (pair: string, all: string[]) => [...all, pair], [])
    .option('--state <name>', 'a state of the file, such as storm')
    .option('--json', 'as JSON')
    .option('-o, --output <file>', 'write it there; - is stdout')
    .action(async (file, options) => {
      const { strikeStudy } = await import('../study/strike-study.ts');
      done((await import('./commands/strike.ts')).strike(file, options, strikeStudy));
    });
}

/** What to do about it. */
function addRework(program: Command, done: (code: ExitCode) => void): void {
  program
    .command('compare <file...>')
    .description('what became better, worse, new and gone between two files, or two states of one; 1 when worse')
    .option('--state <name>', 'both files in this state')
    .option(
      '--states <names>',
      'one file instead: two of its states, such as storm,winter (or typed), or all in one table',
    )
    .option('--strike', 'with the figures of the default strike')
    .option('--exit-1-from <level>', 'exit 1 only when worse in a hazard, defect, advice or cannot-tell, or above')
    .option('--json', 'as JSON, with the default strike')
    .option('--date <date>', 'date of the studies')
    .option('-o, --output <file>', 'write the result there; - is stdout')
    .option('--report <dir>', 'the before-and-after report as an HTML page')
    .option('--statement <dir>', 'two pages for an insurer or a permit file: as found, as left')
    .option('--leave-out <list>', 'what stays off the statement: address, names, site, permit, plan, photos, prices')
    .option('--pdf', 'print the pages to PDF as well')
    .option('--browser <path>', 'browser that prints the PDF')
    .action(async (files, options) => {
      // what a page needs is loaded for a page only
      const { report, statement, leaveOut, pdf } = options;
      if ([report, statement, leaveOut, pdf].every((o) => o === undefined))
        return done((await import('./commands/compare.ts')).compare(files, options));
      done(await (await import('./commands/compare-pages.ts')).comparePages(files, options));
    });

  program
    .command('works <file>')
    .description('works in order, each with what it costs and what it really takes away')
    .option('--budget <money>', 'at most so much, in the currency of the file')
    .option('--hours <hours>', 'at most so many hours of work')
    .option('--state <name>', 'a state of the file, such as storm')
    .option('--json', 'as JSON')
    .option('-o, --output <file>', 'write the improved site file there; - is stdout')
    .option('--sheet <dir>', 'folder for the page of works and the contractor’s sheet')
    .option('--pdf', 'print those pages to PDF as well')
    .option('--browser <path>', 'browser that prints the PDF')
    .action(async (file, options) => done(await (await import('./commands/works.ts')).works(file, options)));
}

/** What is asked without a site. */
function addReference(program: Command, done: (code: ExitCode) => void): void {
  program
    .command('rules')
    .description('the catalogue of conditions')
    .option('--region <region>', 'whose words: us, iec', 'us')
    .option('--json', 'as JSON')
    .option('--markdown', 'as a page of Markdown')
    .option('-o, --output <file>', 'write it there; - is stdout')
    .action(async (options) => done((await import('./commands/rules.ts')).listRules(options)));

  program
    .command('explain <rule>')
    .description('why, clause, what counts as met, how to put it right')
    .option('--region <region>', 'whose words, and where its clause binds: us, ca, iec, uk, au', 'us')
    .action(async (rule, options) => done((await import('./commands/rules.ts')).explain(rule, options)));

  program
    .command('new <file>')
    .description('a starter file with comments; - is stdout')
    .action(async (file) => done((await import('./commands/new.ts')).newFile(file)));

  program
    .command('schema')
    .description(
      'the JSON Schema, for an editor: of the site file, of an owner’s standard, or of what was agreed to stand',
    )
    .argument('[file]', 'site, standard or agreed', 'site')
    .option('-o, --output <file>', 'write it there; - is stdout')
    .action(async (file, options) => done((await import('./commands/schema.ts')).schema(file, options)));
}

async function run(): Promise<ExitCode> {
  let code: ExitCode = exitCode.fine;
  try {
    await build((result) => {
      code = result;
    }).parseAsync(process.argv);
    return code;
  } catch (error) {
    return sayError(error);
  }
}

function sayError(error: unknown): ExitCode {
  if (error instanceof CommanderError) return error.exitCode === 0 ? exitCode.fine : exitCode.input;
  if (error instanceof Stop) {
    process.stderr.write(`${error.message}\n`);
    return error.code;
  }
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(
    `This is a fault of evenground, not of your file. Please report it with the file (names taken out).\n${trace}\n`,
  );
  return exitCode.fault;
}

// A reader that closes the pipe early (head, less) is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(exitCode.fine);
  process.exitCode = exitCode.output;
});

process.exitCode = await run();
