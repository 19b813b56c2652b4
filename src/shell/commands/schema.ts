import { jsonSchema } from '../../site/json-schema.ts';
import { type ExitCode, exitCode } from '../exit-code.ts';
import { print } from '../print.ts';

export function schema(options: { readonly output?: string }): ExitCode {
  print(`${JSON.stringify(jsonSchema(), null, 2)}\n`, options.output);
  return exitCode.fine;
}
