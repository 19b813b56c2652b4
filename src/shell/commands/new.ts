import { existsSync } from 'node:fs';
import { starter } from '../../site/starter.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { print } from '../print.ts';

/** Writes the starter file; never over a file that is there. */
export function newFile(file: string): ExitCode {
  if (file !== '-' && existsSync(file)) {
    throw new Stop(exitCode.output, `${file}: is there already and was not touched. Name another file.`);
  }
  print(starter, file);
  if (file !== '-') process.stderr.write(`${file} written. Next: evenground check ${file}\n`);
  return exitCode.fine;
}
