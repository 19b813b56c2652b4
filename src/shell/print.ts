import { writeWhole } from './files.ts';

/** A result goes to stdout, or whole into the file that was named. */
export function print(text: string, output: string | undefined): void {
  if (output === undefined || output === '-') process.stdout.write(text);
  else writeWhole(output, text);
}
